import { throwStiffnessCarter as stiffnessOf } from "@trialfit/mechanics";
import { STEEL } from "../../../tables/usualMetals.ts";
import { quantity } from "../../Quantity.ts";
import { crankThrow, throwExample, throwInputs } from "../../throwStiffness.ts";

export const throwStiffnessCarter = quantity({
  id: "throwStiffnessCarter",
  name: "Torsional stiffness of a throw, Carter",
  symbol: "k_tc",
  unit: "N m/rad",
  decimals: 0,
  system: "torsion",
  meaning:
    "Stiffness of one throw against twist, by Carter’s estimate. It and Ker Wilson’s lie about 15 % apart: the truth is as uncertain.",
  inputs: throwInputs,
  formula: `pi * E_c / (64 * (1 + ${STEEL.poissonRatio}) * ((L_m + 0.8 * h_w) / D_m^4 + 0.75 * L_cp / D_p^4 + 1.5 * r / (h_w * w_w^3)))`,
  compute: (numbers) => stiffnessOf(crankThrow(numbers)),
  shape: "guarded",
  valid: "solid journals, webs of even section; within about 20 %",
  sources: [{ id: "ker-wilson" }],
  examples: [{ given: throwExample, expect: "633897 N m/rad" }],
  display: true,
});
