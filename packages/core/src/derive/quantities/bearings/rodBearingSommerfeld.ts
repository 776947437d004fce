import { sommerfeld } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodBearingSommerfeld = quantity({
  id: "rodBearingSommerfeld",
  name: "Sommerfeld number of the rod bearing",
  symbol: "S_r",
  unit: "1",
  decimals: 4,
  system: "bearings",
  meaning:
    "The one number that says how a plain bearing runs: viscosity × speed over load, by the square of radius over clearance. Small: thin film.",
  inputs: {
    mu_o: "oilViscosity",
    n_P: "targets.powerSpeed",
    F_cm: "meanCrankpinLoad",
    D_p: "crankshaft.crankpinDiameter",
    L: "rodBearing.length",
    C_rh: "rodBearingClearanceHot",
  },
  formula: "mu_o * n_P / (2 * pi) / (F_cm / (D_p * L)) * (D_p / C_rh)^2",
  compute: ({ mu_o, n_P, F_cm, D_p, L, C_rh }) =>
    sommerfeld({
      viscosity: mu_o,
      angularSpeed: n_P,
      unitLoad: F_cm / (D_p * L),
      journalRadius: D_p / 2,
      radialClearance: C_rh / 2,
    }),
  shape: "guarded",
  valid: "the mean load over a cycle",
  sources: [{ id: "shigley", where: "journal bearings" }],
  examples: [
    {
      given: {
        mu_o: "8 mPa s",
        n_P: "7000 rpm",
        F_cm: "8.862 kN",
        D_p: "48 mm",
        L: "17.6 mm",
        C_rh: "0.06 mm",
      },
      expect: "0.0569",
    },
  ],
  display: true,
});
