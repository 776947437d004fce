import { quantity } from "../../Quantity.ts";

export const secondRingGapRatio = quantity({
  id: "secondRingGapRatio",
  name: "Second ring end gap over bore",
  symbol: "k_2",
  unit: "1",
  decimals: 5,
  system: "rings",
  meaning:
    "End gap of the second ring, measured cold in its own bore, as a share of the bore: how ring makers put the gap they ask for.",
  inputs: { s_2: "ringSet.secondRingEndGap", B: "block.bore" },
  formula: "s_2 / B",
  compute: ({ s_2, B }) => s_2 / B,
  shape: "monotone",
  hot: { quantity: "secondRingGapHot" },
  valid: "measured in the finished bore",
  sources: [{ id: "definition" }],
  examples: [{ given: { s_2: "0.62 mm", B: "86.5 mm" }, expect: "0.00717" }],
});
