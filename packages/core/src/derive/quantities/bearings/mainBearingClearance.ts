import { bearingClearance } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const mainBearingClearance = quantity({
  id: "mainBearingClearance",
  name: "Main bearing clearance",
  symbol: "C_m",
  unit: "mm",
  decimals: 3,
  system: "bearings",
  meaning:
    "Oil clearance across the diameter, cold: housing bore with its fasteners tightened, less two shell walls, less the journal. Negative: the journal does not turn.",
  inputs: { D_Hm: "block.mainHousingBore", t_s: "mainBearing.wall", D_m: "crankshaft.mainJournalDiameter" },
  formula: "D_Hm - 2 * t_s - D_m",
  compute: ({ D_Hm, t_s, D_m }) =>
    bearingClearance({ housingBore: D_Hm, shellWall: t_s, journalDiameter: D_m }),
  shape: "monotone",
  hot: { quantity: "mainBearingClearanceHot" },
  valid: "at the crown of the shells, square to the joint; all at 20 °C",
  sources: [{ id: "definition" }],
  examples: [{ given: { D_Hm: "61 mm", t_s: "1.967 mm", D_m: "57 mm" }, expect: "0.066 mm" }],
});
