import { grooveFlow } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

/** Half of the way round is grooved in the upper shell [rad]. */
const ARC = Math.PI;
/** Offset at which a loaded main bearing runs, over its radial clearance [-]. Source: common practice, 0.6. */
const ECCENTRICITY = 0.6;

export const mainBearingOilFlow = quantity({
  id: "mainBearingOilFlow",
  name: "Oil through a main bearing",
  symbol: "Q_m",
  unit: "L/min",
  decimals: 2,
  system: "lubrication",
  meaning:
    "Oil that the supply pressure pushes from the groove of the upper shell of one main bearing over its lands, hot. It grows with the cube of the clearance.",
  inputs: {
    D_m: "crankshaft.mainJournalDiameter",
    C_mh: "mainBearingClearanceHot",
    p_o: "oil.pressure",
    mu_o: "oilViscosity",
    l_g: "mainBearing.landWidth",
  },
  method:
    "Laminar flow through the slot of an offset journal, over both lands of a groove that goes half way round, at an eccentricity of 0.6.",
  compute: ({ D_m, C_mh, p_o, mu_o, l_g }) =>
    grooveFlow({
      journalDiameter: D_m,
      radialClearance: C_mh / 2,
      supplyPressure: p_o,
      viscosity: mu_o,
      landLength: l_g,
      eccentricity: ECCENTRICITY,
      arc: ARC,
    }),
  shape: "guarded",
  valid: "laminar; fed by pressure alone",
  sources: [
    { id: "shigley", where: "pressure-fed bearings" },
    { id: "common-practice", where: "eccentricity of 0.6" },
  ],
  examples: [
    {
      given: { D_m: "57 mm", C_mh: "0.0472 mm", p_o: "5.5 bar", mu_o: "8.25 mPa s", l_g: "7.5 mm" },
      expect: "0.29 L/min",
    },
  ],
  display: true,
});
