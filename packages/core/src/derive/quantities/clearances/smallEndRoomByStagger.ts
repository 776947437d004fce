import { ALONG_THE_CRANKSHAFT } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";

export const smallEndRoomByStagger = quantity({
  id: "smallEndRoomByStagger",
  name: "Small end to pin boss, by the bank stagger",
  symbol: "c_st",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Room between the small end and the nearer pin boss along the pin, with the rods standing off their cylinders as far as the stagger of the banks can make them; negative when they touch.",
  inputs: {
    s_b: "piston.bossSpacing",
    b_se: "connectingRod.smallEndWidth",
    z_st: "rodOffsetByStagger",
  },
  formula: "(s_b - b_se) / 2 - z_st",
  compute: ({ s_b, b_se, z_st }) => (s_b - b_se) / 2 - z_st,
  shape: "guarded",
  hot: ALONG_THE_CRANKSHAFT,
  valid: "as the offset; end play of the crankshaft takes more",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { s_b: "26.6 mm", b_se: "24 mm", z_st: "0.13 mm" }, expect: "1.17 mm" }],
  display: true,
});
