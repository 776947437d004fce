import { bearings } from "../../bearings/Bearing.ts";
import { filletRoom } from "../../bearings/filletRoom.ts";

export const rodBearingFilletRoom = filletRoom(bearings.rod, {
  expect: "0.028 mm",
  sizes: [
    ["w", "connectingRod.bigEndWidth", "21.8 mm"],
    ["L", "rodBearing.length", "17.6 mm"],
  ],
  assumes:
    "the rod shells, as long as their loaded length and both chamfers, stand in the middle of the big end, which lies against the cheek",
  distance: (n) => (n.w! - n.L! - 2 * n.w_q!) / 2,
  expectBySizes: "-0.004 mm",
});
