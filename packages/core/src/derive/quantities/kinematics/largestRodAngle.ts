import { largestRodAngle as angleOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const largestRodAngle = quantity({
  id: "largestRodAngle",
  name: "Largest rod angle",
  symbol: "phi_max",
  unit: "deg",
  decimals: 2,
  system: "kinematics",
  meaning:
    "How far the connecting rod leans from the cylinder axis at most, to the side to which the offset makes it larger. Side thrust on the piston grows with it.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset" },
  formula: "asin((r + abs(e)) / l)",
  compute: ({ r, l, e }) => angleOf({ throwRadius: r, rodLength: l, pinLineOffset: e }),
  shape: "guarded",
  valid: "r + |e| < l",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm" }, expect: "19.19 deg" }],
});
