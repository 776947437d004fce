import { rodRatio as ratioOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodRatio = quantity({
  id: "rodRatio",
  name: "Rod ratio",
  symbol: "k_l",
  unit: "1",
  decimals: 3,
  system: "kinematics",
  meaning:
    "Rod length over stroke. A small figure means a rod that leans far: more side thrust and a sharper turn at top dead centre. Textbooks often use its relative, throw over rod length.",
  inputs: { l: "connectingRod.length", r: "throwRadius" },
  formula: "l / (2 * r)",
  compute: ({ l, r }) => ratioOf({ rodLength: l, throwRadius: r }),
  shape: "monotone",
  valid: "any slider-crank",
  sources: [{ id: "definition" }],
  examples: [{ given: { l: "144.5 mm", r: "47 mm" }, expect: "1.537" }],
});
