import { pressFitPressure } from "@trialfit/mechanics";
import { pressFitFormula } from "../../pressFitFormula.ts";
import { quantity } from "../../Quantity.ts";

/** Tin bronze. Source: from memory. */
const BRONZE = { elasticModulus: 110e9, poissonRatio: 0.34 };
/** Poisson’s ratio of the rod [-], steel, titanium or aluminium. Source: from memory. */
const ROD_POISSON = 0.3;

export const bushFitPressure = quantity({
  id: "bushFitPressure",
  name: "Pressure of the bush in the small end",
  symbol: "p_bu",
  unit: "MPa",
  decimals: 1,
  system: "rods",
  meaning:
    "Pressure with which the small end grips its bush, cold. Heat takes some of it from a steel or titanium rod’s bush or adds to it, as bronze grows more.",
  inputs: {
    delta_bu: "connectingRod.bushInterference",
    D_bu: "connectingRod.bushOuterDiameter",
    D_so: "connectingRod.smallEndOuterDiameter",
    d_se: "connectingRod.smallEndBore",
    E_r: "connectingRod.modulus",
  },
  formula: pressFitFormula({
    interference: "delta_bu",
    diameter: "D_bu",
    outerDiameter: "D_so",
    innerBore: "d_se",
    outer: { modulus: "E_r", poissonRatio: ROD_POISSON },
    inner: { modulus: "110e9", poissonRatio: BRONZE.poissonRatio },
  }),
  compute: ({ delta_bu, D_bu, D_so, d_se, E_r }) =>
    pressFitPressure({
      interference: delta_bu,
      diameter: D_bu,
      outerDiameter: D_so,
      innerBore: d_se,
      outer: { elasticModulus: E_r, poissonRatio: ROD_POISSON },
      inner: BRONZE,
    }),
  shape: "guarded",
  valid: "an eye that is round all about; elastic",
  sources: [{ id: "shigley", where: "press and shrink fits" }],
  examples: [
    {
      given: { delta_bu: "0.05 mm", D_bu: "25 mm", D_so: "33 mm", d_se: "22.012 mm", E_r: "206 GPa" },
      expect: "22.7 MPa",
    },
  ],
  display: true,
});
