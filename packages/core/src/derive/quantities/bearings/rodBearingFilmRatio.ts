import { filmRatio } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodBearingFilmRatio = quantity({
  id: "rodBearingFilmRatio",
  name: "Film over roughness, rod bearing",
  symbol: "Lambda_r",
  unit: "1",
  decimals: 2,
  system: "bearings",
  meaning:
    "Least film of the rod bearing over the roughness of crankpin and shell together. Below about 1 the peaks touch.",
  inputs: { h_min: "rodBearingLeastFilm", Rq_j: "crankshaft.journalRoughness", Rq_s: "rodBearing.roughness" },
  formula: "h_min / sqrt(Rq_j^2 + Rq_s^2)",
  compute: ({ h_min, Rq_j, Rq_s }) =>
    filmRatio({ filmThickness: h_min, journalRoughness: Rq_j, shellRoughness: Rq_s }),
  shape: "guarded",
  valid: "as the least film",
  sources: [{ id: "shigley" }],
  examples: [{ given: { h_min: "1.4 um", Rq_j: "0.12 um", Rq_s: "0.3 um" }, expect: "4.33" }],
  display: true,
});
