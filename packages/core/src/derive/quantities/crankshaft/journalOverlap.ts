import { journalOverlap as overlapOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const journalOverlap = quantity({
  id: "journalOverlap",
  name: "Journal overlap",
  symbol: "o_j",
  unit: "mm",
  decimals: 2,
  system: "crankshaft",
  meaning:
    "How far main journal and crankpin overlap seen along the crankshaft. It is what makes the web stiff; half of every stroke gained comes off it. Negative: they do not overlap at all.",
  inputs: { D_m: "crankshaft.mainJournalDiameter", D_p: "crankshaft.crankpinDiameter", r: "throwRadius" },
  formula: "(D_m + D_p) / 2 - r",
  compute: ({ D_m, D_p, r }) => overlapOf({ mainDiameter: D_m, crankpinDiameter: D_p, throwRadius: r }),
  shape: "monotone",
  valid: "round journals",
  sources: [{ id: "definition" }],
  examples: [{ given: { D_m: "57 mm", D_p: "48 mm", r: "47 mm" }, expect: "5.50 mm" }],
});
