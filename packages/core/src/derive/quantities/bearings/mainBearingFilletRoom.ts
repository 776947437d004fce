import { bearings } from "../../bearings/Bearing.ts";
import { filletRoom } from "../../bearings/filletRoom.ts";

export const mainBearingFilletRoom = filletRoom(bearings.main, {
  expect: "0.028 mm",
  sizes: [
    ["L_m", "crankshaft.mainJournalLength", "24 mm"],
    ["L", "mainBearing.length", "19 mm"],
    ["E_c", "crankEndPlay", "0.15 mm"],
  ],
  assumes:
    "the main shells, as long as their loaded length and both chamfers, stand in the middle of their journals but for the end play",
  distance: (n) => (n.L_m! - n.L! - 2 * n.w_q! - n.E_c!) / 2,
  expectBySizes: "0.027 mm",
});
