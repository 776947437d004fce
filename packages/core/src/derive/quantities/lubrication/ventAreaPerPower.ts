import { quantity } from "../../Quantity.ts";

export const ventAreaPerPower = quantity({
  id: "ventAreaPerPower",
  name: "Vent area for the power",
  symbol: "a_v",
  unit: "mm2/kW",
  decimals: 2,
  system: "lubrication",
  meaning:
    "Open area of the crankcase’s vents over the power at the crankshaft: gas that passes the rings grows with power and has to leave.",
  inputs: { A_v: "ventilation.area", P_c: "crankPower" },
  formula: "A_v / P_c",
  compute: ({ A_v, P_c }) => A_v / P_c,
  shape: "monotone",
  valid: "four-stroke engines in good order; a vacuum pump stands outside of it",
  sources: [{ id: "definition" }],
  examples: [{ given: { A_v: "440 mm2", P_c: "440 kW" }, expect: "1.00 mm2/kW" }],
  display: true,
});
