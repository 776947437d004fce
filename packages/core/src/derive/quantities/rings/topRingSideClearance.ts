import { ringSideClearance as clearanceOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const topRingSideClearance = quantity({
  id: "topRingSideClearance",
  name: "Top ring side clearance",
  symbol: "c_g1",
  unit: "mm",
  decimals: 3,
  system: "rings",
  meaning:
    "Height of the top groove less height of the ring: play of the ring up and down in its groove. Negative: the ring does not go in.",
  inputs: { g_1: "piston.topGrooveHeight", h_r1: "ringSet.topRingHeight" },
  formula: "g_1 - h_r1",
  compute: ({ g_1, h_r1 }) => clearanceOf({ grooveHeight: g_1, ringHeight: h_r1 }),
  shape: "monotone",
  hot: { quantity: "topRingSideClearanceHot" },
  valid: "rings of rectangular section",
  sources: [{ id: "definition" }],
  examples: [{ given: { g_1: "1.23 mm", h_r1: "1.2 mm" }, expect: "0.030 mm" }],
});
