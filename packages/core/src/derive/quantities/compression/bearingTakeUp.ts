import { quantity } from "../../Quantity.ts";

export const bearingTakeUp = quantity({
  id: "bearingTakeUp",
  name: "Bearing clearance taken up",
  symbol: "delta_C",
  unit: "mm",
  decimals: 3,
  system: "compression",
  meaning:
    "How much higher the piston comes at speed because its inertia lifts rod and crankshaft through half of their bearing clearances. It closes the gap between piston and head.",
  inputs: { C_r: "rodBearingClearance", C_m: "mainBearingClearance" },
  formula: "(C_r + C_m) / 2",
  compute: ({ C_r, C_m }) => (C_r + C_m) / 2,
  shape: "monotone",
  valid: "plain bearings; the oil film keeps a few micrometres of it, the play of the pin adds some",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { C_r: "0.058 mm", C_m: "0.062 mm" }, expect: "0.060 mm" }],
  display: true,
});
