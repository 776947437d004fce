import { quantity } from "../../Quantity.ts";

export const pumpFlow = quantity({
  id: "pumpFlow",
  name: "Oil pump flow",
  symbol: "Q_p",
  unit: "L/min",
  decimals: 1,
  system: "lubrication",
  meaning: "Oil that the pump delivers at the highest speed, before its relief valve opens.",
  inputs: {
    V_pu: "oil.pumpDisplacement",
    i_pu: "oil.pumpRatio",
    n: "targets.speed",
    eta_pu: "oil.pumpEfficiency",
  },
  formula: "V_pu * i_pu * n / (2 * pi) * eta_pu",
  compute: ({ V_pu, i_pu, n, eta_pu }) => ((V_pu * i_pu * n) / (2 * Math.PI)) * eta_pu,
  shape: "monotone",
  valid: "a pump that fills: high suction heads and fast small pumps cavitate",
  sources: [{ id: "definition" }],
  examples: [{ given: { V_pu: "12 cm3", i_pu: "1", n: "7800 rpm", eta_pu: "80 %" }, expect: "74.9 L/min" }],
  display: true,
});
