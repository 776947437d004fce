import { landRatio } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const secondLandRatio = quantity({
  id: "secondLandRatio",
  name: "Second land over bore",
  symbol: "k_h2",
  unit: "1",
  decimals: 4,
  system: "rings",
  meaning:
    "Height of the second land, which carries the pressure between the two upper rings, as a share of the bore.",
  inputs: { h_2: "piston.secondLandHeight", B: "block.bore" },
  formula: "h_2 / B",
  compute: ({ h_2, B }) => landRatio({ landHeight: h_2, bore: B }),
  shape: "monotone",
  valid: "any piston",
  sources: [{ id: "definition" }],
  examples: [{ given: { h_2: "4.2 mm", B: "86.5 mm" }, expect: "0.0486" }],
});
