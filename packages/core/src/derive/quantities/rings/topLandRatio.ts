import { landRatio } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const topLandRatio = quantity({
  id: "topLandRatio",
  name: "Top land over bore",
  symbol: "k_h1",
  unit: "1",
  decimals: 4,
  system: "rings",
  meaning: "Height of the top land, which shields the top ring from the heat, as a share of the bore.",
  inputs: { h_1: "piston.topLandHeight", B: "block.bore" },
  formula: "h_1 / B",
  compute: ({ h_1, B }) => landRatio({ landHeight: h_1, bore: B }),
  shape: "monotone",
  valid: "any piston",
  sources: [{ id: "definition" }],
  examples: [{ given: { h_1: "7 mm", B: "86.5 mm" }, expect: "0.0809" }],
});
