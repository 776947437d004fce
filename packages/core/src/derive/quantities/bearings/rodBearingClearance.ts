import { bearingClearance } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodBearingClearance = quantity({
  id: "rodBearingClearance",
  name: "Rod bearing clearance",
  symbol: "C_r",
  unit: "mm",
  decimals: 3,
  system: "bearings",
  meaning:
    "Oil clearance across the diameter, cold: housing bore with its fasteners tightened, less two shell walls, less the journal. Negative: the journal does not turn.",
  inputs: { D_Hr: "connectingRod.bigEndBore", t_s: "rodBearing.wall", D_p: "crankshaft.crankpinDiameter" },
  formula: "D_Hr - 2 * t_s - D_p",
  compute: ({ D_Hr, t_s, D_p }) =>
    bearingClearance({ housingBore: D_Hr, shellWall: t_s, journalDiameter: D_p }),
  shape: "monotone",
  hot: { quantity: "rodBearingClearanceHot" },
  valid: "at the crown of the shells, square to the joint; all at 20 °C",
  sources: [{ id: "definition" }],
  examples: [{ given: { D_Hr: "51 mm", t_s: "1.472 mm", D_p: "48 mm" }, expect: "0.056 mm" }],
});
