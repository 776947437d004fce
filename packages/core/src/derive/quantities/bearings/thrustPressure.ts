import { quantity } from "../../Quantity.ts";

export const thrustPressure = quantity({
  id: "thrustPressure",
  name: "Pressure on the thrust bearing",
  symbol: "p_th",
  unit: "MPa",
  decimals: 2,
  system: "bearings",
  meaning:
    "Load of the clutch or converter over the thrust face. The faces carry on little oil, so it must stay far below what the shells stand.",
  inputs: { F_th: "mainBearing.thrustLoad", A_th: "mainBearing.thrustArea" },
  formula: "F_th / A_th",
  compute: ({ F_th, A_th }) => F_th / A_th,
  shape: "monotone",
  valid: "load spread evenly over one face",
  sources: [{ id: "definition" }],
  examples: [{ given: { F_th: "1100 N", A_th: "1100 mm2" }, expect: "1.00 MPa" }],
  display: true,
});
