import { pressFitPressure } from "@trialfit/mechanics";
import { STEEL } from "../../../tables/usualMetals.ts";
import { pressFitFormula } from "../../pressFitFormula.ts";
import { quantity } from "../../Quantity.ts";

export const hubFitPressure = quantity({
  id: "hubFitPressure",
  name: "Pressure in the hub’s fit",
  symbol: "p_h",
  unit: "MPa",
  decimals: 1,
  system: "flywheel",
  meaning: "Pressure with which the damper hub grips the crankshaft’s snout.",
  inputs: { delta_h: "damper.interference", D_sn: "damper.snoutDiameter", D_ho: "damper.hubOuterDiameter" },
  formula: pressFitFormula({
    interference: "delta_h",
    diameter: "D_sn",
    outerDiameter: "D_ho",
    outer: { modulus: STEEL.modulusText, poissonRatio: STEEL.poissonRatio },
    inner: { modulus: STEEL.modulusText, poissonRatio: STEEL.poissonRatio },
  }),
  compute: ({ delta_h, D_sn, D_ho }) =>
    pressFitPressure({
      interference: delta_h,
      diameter: D_sn,
      outerDiameter: D_ho,
      innerBore: 0,
      outer: STEEL,
      inner: STEEL,
    }),
  shape: "monotone",
  valid: "steel on steel, the snout taken as solid; at working temperature, with both at one temperature",
  sources: [{ id: "shigley", where: "press and shrink fits" }],
  examples: [{ given: { delta_h: "0.025 mm", D_sn: "38 mm", D_ho: "76 mm" }, expect: "50.8 MPa" }],
  display: true,
});
