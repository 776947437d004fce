import { sideClearance } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodSideClearance = quantity({
  id: "rodSideClearance",
  name: "Rod side clearance",
  symbol: "C_sd",
  unit: "mm",
  decimals: 2,
  system: "rods",
  meaning: "Play of the rods along their crankpin: length of the pin less the widths of all rods on it.",
  inputs: { L_cp: "crankshaft.crankpinLength", n_r: "crankshaft.rodsPerPin", w: "connectingRod.bigEndWidth" },
  formula: "L_cp - n_r * w",
  compute: ({ L_cp, n_r, w }) => sideClearance({ crankpinLength: L_cp, rods: n_r, rodWidth: w }),
  shape: "monotone",
  hot: { quantity: "rodSideClearanceHot" },
  valid: "rods guided at the crankpin; all gaps of the pin together",
  sources: [{ id: "definition" }],
  examples: [
    { given: { L_cp: "48.1 mm", n_r: "2", w: "23.85 mm" }, expect: "0.40 mm" },
    { given: { L_cp: "22.05 mm", n_r: "1", w: "21.8 mm" }, expect: "0.25 mm" },
  ],
});
