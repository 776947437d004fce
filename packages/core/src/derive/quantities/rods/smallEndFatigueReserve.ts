import { quantity } from "../../Quantity.ts";
import {
  smallEndFatigue,
  smallEndGiven,
  smallEndInputs,
  smallEndMethod,
  smallEndSides,
  smallEndSources,
  smallEndValid,
} from "../../smallEnd.ts";

export const smallEndFatigueReserve = quantity({
  id: "smallEndFatigueReserve",
  name: "Fatigue reserve of the small end",
  symbol: "S_Fse",
  unit: "1",
  decimals: 2,
  system: "rods",
  meaning:
    "How many times the stress of the small end could rise before it breaks in time: the bush strains it at all times, and the pull comes and goes in every cycle at overspeed.",
  inputs: {
    ...smallEndInputs,
    sigma_bu: "smallEndPressStress",
    sigma_ww: "rodFatigueHot",
    R_rw: "rodYieldHot",
  },
  method: `${smallEndMethod} Half of it swings about its middle on top of the stress by the bush; amplitude over fatigue strength plus mean over yield strength (Soderberg), inverted, for the weaker side.`,
  compute: ({ sigma_ww, R_rw, ...n }) =>
    smallEndFatigue(smallEndSides(n), { fatigueStrength: sigma_ww, yieldStrength: R_rw }),
  shape: "guarded",
  valid: `${smallEndValid}; compression by the gas is left out`,
  sources: [...smallEndSources, { id: "shigley", where: "fluctuating stresses" }],
  examples: [
    {
      given: { ...smallEndGiven, sigma_bu: "89 MPa", sigma_ww: "366 MPa", R_rw: "995 MPa" },
      expect: "1.78",
    },
  ],
  display: true,
});
