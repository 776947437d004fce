import { filmRatio as ratioOf } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Bearing, Numbers, Paths } from "./Bearing.ts";

/** Declares the least film of a bearing over the roughness of its faces. */
export function filmRatio({ prefix, word, part, index }: Bearing, leastFilm: string) {
  return quantity({
    id: `${prefix}FilmRatio`,
    name: `Film over roughness, ${word}`,
    symbol: `Lambda_${index}`,
    unit: "1",
    decimals: 2,
    system: "bearings",
    meaning: `Least film of the ${word} over the roughness of journal and shell together. Below about 1 the peaks touch.`,
    inputs: {
      [leastFilm]: `${prefix}LeastFilm`,
      Rq_j: "crankshaft.journalRoughness",
      Rq_s: `${part}.roughness`,
    } as Paths,
    formula: `${leastFilm} / sqrt(Rq_j^2 + Rq_s^2)`,
    compute: (n: Numbers) =>
      ratioOf({ filmThickness: n[leastFilm]!, journalRoughness: n.Rq_j!, shellRoughness: n.Rq_s! }),
    shape: "guarded",
    valid: "as the least film",
    sources: [{ id: "shigley" }],
    examples: [{ given: { [leastFilm]: "1.4 um", Rq_j: "0.12 um", Rq_s: "0.3 um" }, expect: "4.33" }],
    display: true,
  });
}
