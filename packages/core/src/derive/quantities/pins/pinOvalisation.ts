import { pinOvalisation as ovalisationOf } from "@trialfit/mechanics";
import { STEEL } from "../../../tables/usualMetals.ts";
import { quantity } from "../../Quantity.ts";

export const pinOvalisation = quantity({
  id: "pinOvalisation",
  name: "Pin ovalisation",
  symbol: "Delta_d",
  unit: "um",
  decimals: 1,
  system: "pins",
  meaning:
    "How much the pin’s round section is squeezed flat at peak pressure, across its diameter. A pin that turns oval splits the bosses and loses its oil film.",
  inputs: {
    F_g: "gasForce",
    d_p: "pistonPin.outerDiameter",
    d_i: "pistonPin.innerDiameter",
    l_p: "pistonPin.length",
  },
  formula: `1.35 * F_g / (${STEEL.modulusText} * l_p) * ((1 + d_i / d_p) / (1 - d_i / d_p))^3 * (0.1 - (d_i / d_p - 0.4)^3)`,
  compute: ({ F_g, d_p, d_i, l_p }) =>
    ovalisationOf({
      force: F_g,
      pinDiameter: d_p,
      pinBore: d_i,
      pinLength: l_p,
      elasticModulus: STEEL.elasticModulus,
    }),
  shape: "monotone",
  valid: `steel pins (${STEEL.elasticModulus / 1e9} GPa) with an inner diameter of 0.4 to 0.8 of the outer`,
  sources: [{ id: "kolchin-demidov" }, { id: "from-memory", where: "modulus of steel" }],
  examples: [{ given: { F_g: "92.8494 kN", d_p: "22 mm", d_i: "12 mm", l_p: "56.4 mm" }, expect: "41.1 um" }],
});
