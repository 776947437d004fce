import { inletGasSpeed as speedOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const inletGasSpeed = quantity({
  id: "inletGasSpeed",
  name: "Mean gas speed through the inlet valves",
  symbol: "v_gi",
  unit: "m/s",
  decimals: 1,
  system: "charge",
  meaning:
    "Mean speed at which the charge would pass the area of the inlet valve heads if it followed the piston. Engines give their greatest power at about 60 to 80 m/s of it (from memory); far above, they cannot breathe.",
  inputs: {
    B: "block.bore",
    n_vi: "inletValve.perCylinder",
    d_i: "inletValve.headDiameter",
    S_pP: "meanPistonSpeedAtPower",
  },
  formula: "B^2 / (n_vi * d_i^2) * S_pP",
  compute: ({ B, n_vi, d_i, S_pP }) =>
    speedOf({ bore: B, valves: n_vi, valveDiameter: d_i, meanPistonSpeed: S_pP }),
  shape: "monotone",
  valid: "four-stroke engines; mean over the stroke",
  sources: [{ id: "taylor" }, { id: "from-memory" }],
  examples: [{ given: { B: "86.5 mm", n_vi: "2", d_i: "35 mm", S_pP: "23.19 m/s" }, expect: "70.8 m/s" }],
  display: true,
});
