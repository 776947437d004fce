import { quantity } from "../../Quantity.ts";

export const journalOverlapRatio = quantity({
  id: "journalOverlapRatio",
  name: "Journal overlap over crankpin",
  symbol: "k_oj",
  unit: "1",
  decimals: 3,
  system: "crankshaft",
  meaning: "Journal overlap as a share of the crankpin’s diameter.",
  inputs: { o_j: "journalOverlap", D_p: "crankshaft.crankpinDiameter" },
  formula: "o_j / D_p",
  compute: ({ o_j, D_p }) => o_j / D_p,
  shape: "monotone",
  valid: "round journals",
  sources: [{ id: "definition" }],
  examples: [{ given: { o_j: "5.5 mm", D_p: "48 mm" }, expect: "0.115" }],
});
