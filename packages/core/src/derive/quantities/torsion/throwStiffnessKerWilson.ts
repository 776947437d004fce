import { throwStiffnessKerWilson as stiffnessOf } from "@trialfit/mechanics";
import { STEEL } from "../../../tables/usualMetals.ts";
import { quantity } from "../../Quantity.ts";
import { crankThrow, throwExample, throwInputs } from "../../throwStiffness.ts";

export const throwStiffnessKerWilson = quantity({
  id: "throwStiffnessKerWilson",
  name: "Torsional stiffness of a throw, Ker Wilson",
  symbol: "k_tw",
  unit: "N m/rad",
  decimals: 0,
  system: "torsion",
  meaning: "Stiffness of one throw against twist, by Ker Wilson’s estimate.",
  inputs: throwInputs,
  formula: `pi * E_c / (64 * (1 + ${STEEL.poissonRatio}) * ((L_m + 0.4 * D_m) / D_m^4 + (L_cp + 0.4 * D_p) / D_p^4 + (r - 0.2 * (D_m + D_p)) / (h_w * w_w^3)))`,
  compute: (numbers) => stiffnessOf(crankThrow(numbers)),
  shape: "guarded",
  valid: "solid journals, webs of even section; within about 20 %",
  sources: [{ id: "ker-wilson" }],
  examples: [{ given: throwExample, expect: "548083 N m/rad" }],
  display: true,
});
