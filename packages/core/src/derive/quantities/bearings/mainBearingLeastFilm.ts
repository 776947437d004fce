import { landsOf } from "../../bearings/groove.ts";
import { leastFilm } from "../../bearings/leastFilm.ts";
import {
  mainLoadCycles,
  mainLoadExamples,
  mainLoadInputs,
  mainLoadMethod,
  mainLoadRoutes,
  mainLoadTables,
  mainLoadValid,
} from "../../bearings/mainLoads.ts";
import { quantity } from "../../Quantity.ts";

const example = { mu_o: "8.25 mPa s", D_m: "57 mm", L: "19 mm", C_mh: "0.06 mm", groove: "upper" };

export const mainBearingLeastFilm = quantity({
  id: "mainBearingLeastFilm",
  name: "Least film of the main bearings",
  symbol: "h_mc",
  unit: "um",
  decimals: 2,
  system: "bearings",
  meaning:
    "Least oil film over a working cycle of the main bearing where it is least, the swinging load followed step by step. A groove all round costs most of it. For comparing builds that are computed alike.",
  inputs: {
    ...mainLoadInputs,
    mu_o: "oilViscosity",
    D_m: "crankshaft.mainJournalDiameter",
    L: "mainBearing.length",
    C_mh: "mainBearingClearanceHot",
  },
  choices: { groove: "mainBearing.groove" },
  tables: mainLoadTables,
  routes: mainLoadRoutes,
  method: `${mainLoadMethod} The journal’s path in its clearance is followed by the mobility method of a short bearing until the cycle closes, in each main bearing; the least film of all is taken. A groove all round makes two short bearings of one.`,
  compute: (numbers, words, tables, route) => {
    const lands = landsOf(words);
    const { mu_o, n_P, D_m, L, C_mh } = numbers;
    const sizes = {
      viscosity: mu_o,
      angularSpeed: n_P,
      journalDiameter: D_m,
      length: L / lands,
      clearance: C_mh,
    };
    const share = (samples: Float64Array) => samples.map((force) => force / lands);
    // The journal turns clockwise in this frame, the shell stands still.
    const meanTurning = -1 / 2;
    const films = mainLoadCycles(numbers, tables, route).map(({ x, y }) =>
      leastFilm(sizes, { x: share(x), y: share(y) }, meanTurning),
    );
    return Math.min(...films);
  },
  shape: "guarded",
  valid: `short bearings, smooth parallel parts, enough oil; ${mainLoadValid}`,
  sources: [{ id: "from-memory", where: "Booker’s mobility method" }, { id: "taylor" }],
  examples: [
    { given: { ...mainLoadExamples[0], ...example }, expect: "3.20 um" },
    { given: { ...mainLoadExamples[1], ...example }, expect: "1.83 um" },
    { given: { ...mainLoadExamples[2], ...example }, expect: "2.62 um" },
  ],
  display: true,
});
