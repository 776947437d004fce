import { throwStiffnessThroughOverlap as stiffnessOf } from "@trialfit/mechanics";
import { STEEL } from "../../../tables/usualMetals.ts";
import { quantity } from "../../Quantity.ts";
import { crankThrow, throwExample, throwInputs } from "../../throwStiffness.ts";

export const throwStiffnessThroughOverlap = quantity({
  id: "throwStiffnessThroughOverlap",
  name: "Torsional stiffness of a throw through its overlap",
  symbol: "k_to",
  unit: "N m/rad",
  decimals: 0,
  system: "torsion",
  meaning:
    "Stiffness that journal, crankpin and the straight core that both share through the webs would have alone. A throw is at least about as stiff; with little overlap the web around the core carries nearly all. Zero where they do not overlap.",
  inputs: throwInputs,
  method: `Main journal, crankpin and, through both webs, the lens that they cover together, as springs in a row; torsion constant of the lens A⁴/(4π²I_p); modulus of shear from E with a Poisson’s ratio of ${STEEL.poissonRatio}.`,
  compute: (numbers) => stiffnessOf(crankThrow(numbers)),
  shape: "guarded",
  valid: "solid journals; a floor, never the stiffness itself",
  sources: [{ id: "timoshenko", where: "torsion of a bar of any section" }],
  examples: [
    { given: throwExample, expect: "1310 N m/rad" },
    { given: { ...throwExample, r: "30 mm" }, expect: "128915 N m/rad" },
    { given: { ...throwExample, r: "55 mm" }, expect: "0 N m/rad" },
  ],
  display: true,
});
