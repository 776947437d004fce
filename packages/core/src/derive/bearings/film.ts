import { finiteBearing, type RunningBearing } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Bearing, Numbers, Paths } from "./Bearing.ts";
import { grooveChoice, grooveExample, landsOf, type Words } from "./groove.ts";

/** What the steady film of a bearing rests on. */
export const filmInputs = ({ load, journal, part, hot }: Bearing): Paths => ({
  [load[0]]: load[1],
  mu_o: "oilViscosity",
  n_P: "targets.powerSpeed",
  [journal[0]]: journal[1],
  L: `${part}.length`,
  [hot[0]]: hot[1],
});

export const filmExample = ({ load, journal, hot }: Bearing): Paths => ({
  [load[0]]: "24 kN",
  mu_o: "8.25 mPa s",
  n_P: "7400 rpm",
  [journal[0]]: "48 mm",
  L: "17.6 mm",
  [hot[0]]: "0.064 mm",
});

interface Film {
  /** Last part of the id. */
  readonly id: string;
  readonly name: (bearing: string) => string;
  readonly symbol: string;
  readonly unit: string;
  readonly decimals: number;
  readonly meaning: (word: string) => string;
  readonly of: (land: RunningBearing, lands: number) => number;
}

/** Results of the steadily loaded film that are shown, for main and rod bearings alike. */
export const films = {
  eccentricity: {
    id: "Eccentricity",
    name: (bearing) => `Eccentricity of the ${bearing}`,
    symbol: "epsilon_",
    unit: "1",
    decimals: 3,
    meaning: () =>
      "Offset of the journal in its bearing over the radial clearance, under the mean load: near 1 the film is thin.",
    of: ({ eccentricity }) => eccentricity,
  },
  film: {
    id: "SteadyFilm",
    name: (bearing) => `Film of the ${bearing}, mean load`,
    symbol: "h_",
    unit: "um",
    decimals: 2,
    meaning: (word) =>
      `Least oil film of the ${word} under the mean load. The true load swings and squeezes; see the least film over the cycle.`,
    of: ({ film }) => film,
  },
  peakPressure: {
    id: "PeakPressure",
    name: (bearing) => `Film pressure in the ${bearing}`,
    symbol: "p_f",
    unit: "MPa",
    decimals: 0,
    meaning: () => "Greatest pressure in the oil film under the mean load.",
    of: ({ peakPressure }) => peakPressure,
  },
  friction: {
    id: "Friction",
    name: (bearing) => `Friction of a ${bearing}`,
    symbol: "P_f",
    unit: "W",
    decimals: 0,
    meaning: (word) => `Power that one ${word} turns into heat.`,
    of: ({ frictionPower }, lands) => lands * frictionPower,
  },
  flow: {
    id: "Flow",
    name: (bearing) => `Oil flow of a ${bearing}`,
    symbol: "Q_",
    unit: "L/min",
    decimals: 2,
    meaning: (word) =>
      `Oil that leaves the loaded film of one ${word} over its sides, drawn along by the journal; the supply pressure adds to it.`,
    // Beside a groove all round, one side of each land gives its oil back to the groove.
    of: ({ sideFlow }) => sideFlow,
  },
} as const satisfies Readonly<Record<string, Film>>;

/** Declares one result of the steadily loaded film of a bearing. */
export function film(
  bearing: Bearing,
  shown: Film,
  { expect, ...named }: { readonly expect: string; readonly id?: string; readonly symbol?: string },
) {
  const { prefix, word, index, load, journal, hot } = bearing;
  return quantity({
    id: named.id ?? `${prefix}${shown.id}`,
    name: shown.name(word),
    symbol: named.symbol ?? `${shown.symbol}${index}`,
    unit: shown.unit,
    decimals: shown.decimals,
    meaning: shown.meaning(word),
    system: "bearings",
    inputs: filmInputs(bearing),
    choices: grooveChoice(bearing),
    method: `Reynolds’ equation for a bearing of finite length, solved ahead and kept as a table, under the mean load over the cycle at the power speed with the hot clearance and the viscosity of the film.${bearing.part === "mainBearing" ? " A groove all round makes two short bearings of one." : ""}`,
    compute: (n: Numbers, words: Words) => {
      const lands = landsOf(words);
      const land = finiteBearing({
        load: n[load[0]]! / lands,
        viscosity: n.mu_o!,
        angularSpeed: n.n_P!,
        journalDiameter: n[journal[0]]!,
        length: n.L! / lands,
        radialClearance: n[hot[0]]! / 2,
      });
      return shown.of(land, lands);
    },
    shape: "guarded",
    valid:
      "a steady load, smooth parallel parts, enough oil; length over diameter 0.1 to 2. For comparing builds",
    sources: [{ id: "shigley", where: "journal bearings" }],
    examples: [{ given: { ...filmExample(bearing), ...grooveExample(bearing) }, expect }],
    display: true,
  });
}
