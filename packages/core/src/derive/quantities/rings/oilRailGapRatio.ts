import { quantity } from "../../Quantity.ts";

export const oilRailGapRatio = quantity({
  id: "oilRailGapRatio",
  name: "Oil rail end gap over bore",
  symbol: "k_3",
  unit: "1",
  decimals: 5,
  system: "rings",
  meaning:
    "End gap of the oil ring’s rails, measured cold in their own bore, as a share of the bore. Rails bear on an expander and are mostly given a least gap, not a share of the bore.",
  inputs: { s_3: "ringSet.oilRailEndGap", B: "block.bore" },
  formula: "s_3 / B",
  compute: ({ s_3, B }) => s_3 / B,
  shape: "monotone",
  hot: { quantity: "oilRailGapHot" },
  valid: "measured in the finished bore",
  sources: [{ id: "definition" }],
  examples: [{ given: { s_3: "0.40 mm", B: "86.5 mm" }, expect: "0.00462" }],
  display: true,
});
