import { pinWallRatio as ratioOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const pinWallRatio = quantity({
  id: "pinWallRatio",
  name: "Inner over outer pin diameter",
  symbol: "k_w",
  unit: "1",
  decimals: 3,
  system: "pins",
  meaning: "Bore of the pin over its outer diameter: the larger, the lighter and the weaker the pin.",
  inputs: { d_p: "pistonPin.outerDiameter", d_i: "pistonPin.innerDiameter" },
  formula: "d_i / d_p",
  compute: ({ d_p, d_i }) => ratioOf({ pinDiameter: d_p, pinBore: d_i }),
  shape: "monotone",
  valid: "round pins",
  sources: [{ id: "definition" }],
  examples: [{ given: { d_p: "22 mm", d_i: "12 mm" }, expect: "0.545" }],
});
