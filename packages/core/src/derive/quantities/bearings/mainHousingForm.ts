import { quantity } from "../../Quantity.ts";

export const mainHousingForm = quantity({
  id: "mainHousingForm",
  name: "Main housing, off round and straight",
  symbol: "f_Hm",
  unit: "mm",
  decimals: 4,
  system: "bearings",
  meaning:
    "Out-of-round or taper of the main bearing housings, whichever is more, with the caps tightened. The shells take the shape of their housing.",
  inputs: { o_Hm: "block.mainHousingOutOfRound", k_Hm: "block.mainHousingTaper" },
  formula: "max(o_Hm, k_Hm)",
  compute: ({ o_Hm, k_Hm }) => Math.max(o_Hm, k_Hm),
  shape: "monotone",
  valid: "fasteners tightened as in the final build, without shells; beside the joint, not on it",
  sources: [{ id: "definition" }],
  examples: [{ given: { o_Hm: "0.007 mm", k_Hm: "0.004 mm" }, expect: "0.0070 mm" }],
});
