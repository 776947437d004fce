import { quantity } from "../../Quantity.ts";

export const specificPower = quantity({
  id: "specificPower",
  name: "Power for each litre",
  symbol: "P_H",
  unit: "kW/L",
  decimals: 1,
  system: "targets",
  meaning:
    "Power at the crankshaft over the displacement: how highly the engine is tuned. It grows with mean effective pressure and with speed, and with it the load on every part.",
  inputs: { P_c: "crankPower", V_H: "engineDisplacement" },
  formula: "P_c / V_H",
  compute: ({ P_c, V_H }) => P_c / V_H,
  shape: "guarded",
  valid: "any engine",
  sources: [{ id: "definition" }],
  examples: [{ given: { P_c: "440 kW", V_H: "2.2096 L" }, expect: "199.1 kW/L" }],
  display: true,
});
