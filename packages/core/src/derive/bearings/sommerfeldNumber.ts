import { sommerfeld } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Bearing, Numbers } from "./Bearing.ts";
import { filmInputs } from "./film.ts";

/** Declares the Sommerfeld number of a bearing under its mean load. */
export function sommerfeldNumber(bearing: Bearing) {
  const { prefix, word, index, load, journal, hot } = bearing;
  const [F, D, C] = [load[0], journal[0], hot[0]];
  return quantity({
    id: `${prefix}Sommerfeld`,
    name: `Sommerfeld number of the ${word}`,
    symbol: `S_${index}`,
    unit: "1",
    decimals: 4,
    system: "bearings",
    meaning:
      "The one number that says how a plain bearing runs: viscosity × speed over load, by the square of radius over clearance. Small: thin film.",
    inputs: filmInputs(bearing),
    formula: `mu_o * n_P / (2 * pi) / (${F} / (${D} * L)) * (${D} / ${C})^2`,
    compute: (n: Numbers) =>
      sommerfeld({
        viscosity: n.mu_o!,
        angularSpeed: n.n_P!,
        unitLoad: n[F]! / (n[D]! * n.L!),
        journalRadius: n[D]! / 2,
        radialClearance: n[C]! / 2,
      }),
    shape: "guarded",
    valid: "the mean load over a cycle",
    sources: [{ id: "shigley", where: "journal bearings" }],
    examples: [
      {
        given: {
          mu_o: "8 mPa s",
          n_P: "7000 rpm",
          [F]: "8.862 kN",
          [D]: "48 mm",
          L: "17.6 mm",
          [C]: "0.06 mm",
        },
        expect: "0.0569",
      },
    ],
    display: true,
  });
}
