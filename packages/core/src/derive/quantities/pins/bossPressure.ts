import { bearingPressure } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const bossPressure = quantity({
  id: "bossPressure",
  name: "Pin boss pressure",
  symbol: "p_b",
  unit: "MPa",
  decimals: 1,
  system: "pins",
  meaning:
    "Gas force at peak pressure over the area of both pin bosses seen from above: diameter times loaded length.",
  inputs: { F_g: "gasForce", d_p: "pistonPin.outerDiameter", l_b: "piston.bossLength" },
  formula: "F_g / (2 * d_p * l_b)",
  compute: ({ F_g, d_p, l_b }) => bearingPressure({ force: F_g, diameter: d_p, length: 2 * l_b }),
  shape: "monotone",
  valid: "the force shared evenly by both bosses",
  sources: [{ id: "definition" }],
  examples: [{ given: { F_g: "92.8494 kN", d_p: "22 mm", l_b: "16 mm" }, expect: "131.9 MPa" }],
});
