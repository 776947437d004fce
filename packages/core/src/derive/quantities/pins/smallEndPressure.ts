import { bearingPressure } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const smallEndPressure = quantity({
  id: "smallEndPressure",
  name: "Small-end bearing pressure",
  symbol: "p_se",
  unit: "MPa",
  decimals: 1,
  system: "pins",
  meaning:
    "Gas force at peak pressure over the area of the small-end bush seen from above: diameter times width.",
  inputs: { F_g: "gasForce", d_p: "pistonPin.outerDiameter", b_se: "connectingRod.smallEndWidth" },
  formula: "F_g / (d_p * b_se)",
  compute: ({ F_g, d_p, b_se }) => bearingPressure({ force: F_g, diameter: d_p, length: b_se }),
  shape: "monotone",
  valid: "a bush as wide as the small end; a tapered small end has less",
  sources: [{ id: "definition" }],
  examples: [{ given: { F_g: "92.8494 kN", d_p: "22 mm", b_se: "22 mm" }, expect: "191.8 MPa" }],
});
