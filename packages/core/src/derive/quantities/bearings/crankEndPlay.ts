import { crankEndPlay as playOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const crankEndPlay = quantity({
  id: "crankEndPlay",
  name: "Crankshaft end play",
  symbol: "E_c",
  unit: "mm",
  decimals: 2,
  system: "bearings",
  meaning:
    "How far the crankshaft can move endways, from the sizes of thrust journal, web and washers. Check it with an indicator.",
  inputs: {
    L_th: "crankshaft.thrustLength",
    w_th: "mainBearing.thrustWebWidth",
    t_th: "mainBearing.thrustWasher",
  },
  formula: "L_th - (w_th + 2 * t_th)",
  compute: ({ L_th, w_th, t_th }) => playOf({ journalLength: L_th, webWidth: w_th, washerThickness: t_th }),
  shape: "monotone",
  valid: "cold, caps tightened with the thrust faces in line",
  sources: [{ id: "definition" }],
  examples: [{ given: { L_th: "27.20 mm", w_th: "22.00 mm", t_th: "2.52 mm" }, expect: "0.16 mm" }],
  display: true,
});
