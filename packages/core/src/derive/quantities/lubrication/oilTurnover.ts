import { quantity } from "../../Quantity.ts";

export const oilTurnover = quantity({
  id: "oilTurnover",
  name: "Time in which the oil goes round",
  symbol: "t_o",
  unit: "s",
  decimals: 1,
  system: "lubrication",
  meaning:
    "Time in which the pump moves all the oil once at the highest speed. A short one leaves the oil no time to settle and give off air.",
  inputs: { V_oil: "oil.capacity", Q_p: "pumpFlow" },
  formula: "V_oil / Q_p",
  compute: ({ V_oil, Q_p }) => V_oil / Q_p,
  shape: "monotone",
  valid: "all of the oil in use; what the relief valve returns inside the pump goes round faster",
  sources: [{ id: "definition" }],
  examples: [{ given: { V_oil: "5.5 L", Q_p: "74.9 L/min" }, expect: "4.4 s" }],
  display: true,
});
