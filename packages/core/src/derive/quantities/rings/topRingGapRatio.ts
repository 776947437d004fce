import { quantity } from "../../Quantity.ts";

export const topRingGapRatio = quantity({
  id: "topRingGapRatio",
  name: "Top ring end gap over bore",
  symbol: "k_1",
  unit: "1",
  decimals: 5,
  system: "rings",
  meaning:
    "End gap of the top ring, measured cold in its own bore, as a share of the bore: how ring makers put the gap they ask for.",
  inputs: { s_1: "ringSet.topRingEndGap", B: "block.bore" },
  formula: "s_1 / B",
  compute: ({ s_1, B }) => s_1 / B,
  shape: "monotone",
  hot: { quantity: "topRingGapHot" },
  valid: "measured in the finished bore",
  sources: [{ id: "definition" }],
  examples: [{ given: { s_1: "0.58 mm", B: "86.5 mm" }, expect: "0.00671" }],
});
