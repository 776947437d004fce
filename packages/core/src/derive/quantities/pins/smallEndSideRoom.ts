import { smallEndSideRoom as roomOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const smallEndSideRoom = quantity({
  id: "smallEndSideRoom",
  name: "Small end to pin boss",
  symbol: "c_sb",
  unit: "mm",
  decimals: 2,
  system: "pins",
  meaning:
    "Room between the small end and the nearer pin boss along the pin, with the rod standing off the cylinder’s middle as entered; negative when they touch.",
  inputs: {
    s_b: "piston.bossSpacing",
    b_se: "connectingRod.smallEndWidth",
    z_0: "connectingRod.planeOffset",
  },
  formula: "(s_b - b_se) / 2 - abs(z_0)",
  compute: ({ s_b, b_se, z_0 }) =>
    roomOf({ bossDistance: s_b, smallEndWidth: b_se, planeOffset: z_0, axialFloat: 0 }),
  shape: "guarded",
  hot: { quantity: "smallEndSideRoomHot" },
  valid: "side play of the rod and end play of the crankshaft are left out: they take more",
  sources: [{ id: "definition" }],
  examples: [{ given: { s_b: "24 mm", b_se: "22 mm", z_0: "0.3 mm" }, expect: "0.70 mm" }],
});
