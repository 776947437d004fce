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
    "How far the crankshaft can move endways, cold: as measured with an indicator, or else from the sizes of thrust journal, web and washers.",
  inputs: {
    E_m: "mainBearing.endPlay",
    L_th: "crankshaft.thrustLength",
    w_th: "mainBearing.thrustWebWidth",
    t_th: "mainBearing.thrustWasher",
  },
  routes: [
    { needs: ["E_m"] },
    { needs: ["L_th", "w_th", "t_th"], assumes: "the end play is what the sizes of the thrust bearing give" },
  ],
  method: "As measured; or the thrust journal’s length less the web and both washers.",
  cases: {
    1: "E_m",
    2: "L_th - w_th - 2 * t_th",
  },
  compute: ({ E_m, L_th, w_th, t_th }, _words, _tables, route) =>
    route === 0 ? E_m : playOf({ journalLength: L_th, webWidth: w_th, washerThickness: t_th }),
  shape: "monotone",
  hot: { quantity: "crankEndPlayHot" },
  valid: "cold, caps tightened with the thrust faces in line",
  sources: [{ id: "definition" }],
  examples: [
    { given: { E_m: "0.15 mm" }, expect: "0.15 mm" },
    { given: { L_th: "27.20 mm", w_th: "22.00 mm", t_th: "2.52 mm" }, expect: "0.16 mm" },
  ],
  display: true,
});
