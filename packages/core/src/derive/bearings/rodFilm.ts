import { finiteBearing, type RunningBearing } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";

const inputs = {
  F_cm: "meanCrankpinLoad",
  mu_o: "oilViscosity",
  n_P: "targets.powerSpeed",
  D_p: "crankshaft.crankpinDiameter",
  L: "rodBearing.length",
  C_rh: "rodBearingClearanceHot",
} as const;

interface RodFilm {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly unit: string;
  readonly decimals: number;
  readonly meaning: string;
  readonly of: (running: RunningBearing) => number;
  readonly expect: string;
}

/** Declares one result of the steadily loaded film of the rod bearing. */
export function rodFilm({ of, expect, ...own }: RodFilm) {
  return quantity({
    ...own,
    system: "bearings",
    inputs,
    method:
      "Reynolds’ equation for a bearing of finite length, solved ahead and kept as a table, under the mean crankpin load at the power speed with the hot clearance and the viscosity of the film.",
    compute: ({ F_cm, mu_o, n_P, D_p, L, C_rh }) =>
      of(
        finiteBearing({
          load: F_cm,
          viscosity: mu_o,
          angularSpeed: n_P,
          journalDiameter: D_p,
          length: L,
          radialClearance: C_rh / 2,
        }),
      ),
    shape: "guarded",
    valid:
      "a steady load, smooth parallel parts, enough oil; length over diameter 0.1 to 2. For comparing builds",
    sources: [{ id: "shigley", where: "journal bearings" }],
    examples: [
      {
        given: {
          F_cm: "24 kN",
          mu_o: "8.25 mPa s",
          n_P: "7400 rpm",
          D_p: "48 mm",
          L: "17.6 mm",
          C_rh: "0.064 mm",
        },
        expect,
      },
    ],
    display: true,
  });
}
