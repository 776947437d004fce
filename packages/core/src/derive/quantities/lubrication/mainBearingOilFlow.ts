import { grooveFlow } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

/** How far round a groove goes [rad]. */
const arcs: Readonly<Record<string, number>> = { upper: Math.PI, full: 2 * Math.PI };
/** Offset at which a loaded main bearing runs, over its radial clearance [-], where its loads are not known. */
const USUAL_ECCENTRICITY = 0.6;

const example = {
  D_m: "57 mm",
  C_mh: "0.0472 mm",
  p_o: "5.5 bar",
  mu_o: "8.25 mPa s",
  l_g: "7.5 mm",
};

export const mainBearingOilFlow = quantity({
  id: "mainBearingOilFlow",
  name: "Oil through a main bearing",
  symbol: "Q_m",
  unit: "L/min",
  decimals: 2,
  system: "lubrication",
  meaning:
    "Oil that the supply pressure pushes from the groove of one main bearing over its lands, hot. It grows with the cube of the clearance.",
  inputs: {
    D_m: "crankshaft.mainJournalDiameter",
    C_mh: "mainBearingClearanceHot",
    p_o: "oil.pressure",
    mu_o: "oilViscosity",
    l_g: "mainBearing.landWidth",
    epsilon_m: "mainBearingEccentricity",
  },
  choices: { groove: "mainBearing.groove" },
  routes: [
    { needs: ["epsilon_m"] },
    { needs: [], assumes: "the main journals run at an eccentricity of 0.6 (common practice)" },
  ],
  method:
    "Laminar flow through the slot of an offset journal, over both lands of a groove that goes half way or all the way round, about the thickest film.",
  compute: ({ D_m, C_mh, p_o, mu_o, l_g, epsilon_m }, { groove }, _tables, route) =>
    grooveFlow({
      journalDiameter: D_m,
      radialClearance: C_mh / 2,
      supplyPressure: p_o,
      viscosity: mu_o,
      landLength: l_g,
      eccentricity: route === 0 ? epsilon_m : USUAL_ECCENTRICITY,
      arc: arcs[groove]!,
    }),
  shape: "guarded",
  valid: "laminar; fed by pressure alone",
  sources: [
    { id: "shigley", where: "pressure-fed bearings" },
    { id: "common-practice", where: "eccentricity of 0.6" },
  ],
  examples: [
    { given: { ...example, epsilon_m: "0.9", groove: "upper" }, expect: "0.44 L/min" },
    { given: { ...example, epsilon_m: "0.6", groove: "full" }, expect: "0.32 L/min" },
    { given: { ...example, groove: "upper" }, expect: "0.29 L/min" },
  ],
  display: true,
});
