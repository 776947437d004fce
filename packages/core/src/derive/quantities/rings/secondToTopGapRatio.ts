import { quantity } from "../../Quantity.ts";

export const secondToTopGapRatio = quantity({
  id: "secondToTopGapRatio",
  name: "Second ring gap over top ring gap",
  symbol: "k_21",
  unit: "1",
  decimals: 2,
  system: "rings",
  meaning:
    "End gap of the second ring over that of the top ring. With more gap below than above, gas that has passed the top ring escapes and does not lift it.",
  inputs: { s_2: "ringSet.secondRingEndGap", s_1: "ringSet.topRingEndGap" },
  formula: "s_2 / s_1",
  compute: ({ s_2, s_1 }) => s_2 / s_1,
  shape: "monotone",
  hot: { coldOnly: "ring makers state it cold; what is left of each gap hot has a value of its own" },
  valid: "a top ring that has a gap",
  sources: [{ id: "definition" }],
  examples: [{ given: { s_2: "0.62 mm", s_1: "0.58 mm" }, expect: "1.07" }],
});
