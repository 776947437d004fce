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
  method: `Ker Wilson’s equivalent lengths of main journal, crankpin and webs, added as springs in a row; modulus of shear from E with a Poisson’s ratio of ${STEEL.poissonRatio}.`,
  compute: (numbers) => stiffnessOf(crankThrow(numbers)),
  shape: "guarded",
  valid: "solid journals, webs of even section; within about 20 %",
  sources: [{ id: "ker-wilson" }],
  examples: [{ given: throwExample, expect: "548083 N m/rad" }],
  display: true,
});
