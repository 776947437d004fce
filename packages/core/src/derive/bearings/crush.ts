import { crushPressure, crushStress } from "@trialfit/mechanics";
import { STEEL } from "../../tables/usualMetals.ts";
import { quantity } from "../Quantity.ts";
import type { Bearing, Numbers, Paths } from "./Bearing.ts";

const common = {
  shape: "guarded",
  valid: "upper bound: the housing is taken as stiff and gives way in truth",
  sources: [{ id: "plane-geometry", where: "thin ring" }],
  display: true,
} as const;

/** Declares the stress in the shells by their crush. */
export function shellCrushStress({ prefix, word, part, index, housing }: Bearing) {
  const H = housing[0];
  return quantity({
    ...common,
    id: `${prefix}CrushStress`,
    name: `Crush stress of a ${word} shell`,
    symbol: `sigma_c${index}`,
    unit: "MPa",
    decimals: 0,
    system: "bearings",
    meaning: `Compression round the ${word} shells by their crush. Too little and a shell turns in its housing; too much and it buckles inwards.`,
    inputs: { a_c: `${part}.crush`, [H]: housing[1] } as Paths,
    formula: `2 * ${STEEL.modulusText} * a_c / (pi * ${H})`,
    compute: (n: Numbers) =>
      crushStress({ crush: n.a_c!, housingBore: n[H]!, elasticModulus: STEEL.elasticModulus }),
    examples: [{ given: { a_c: "0.045 mm", [H]: "51 mm" }, expect: "116 MPa" }],
  });
}

/** Declares the pressure with which the shells sit in their housing. */
export function shellCrushPressure({ prefix, word, part, index, housing }: Bearing) {
  const H = housing[0];
  return quantity({
    ...common,
    id: `${prefix}CrushPressure`,
    name: `Seat pressure of a ${word} shell`,
    symbol: `p_c${index}`,
    unit: "MPa",
    decimals: 2,
    system: "bearings",
    meaning: `Pressure with which the ${word} shells press on their housing by crush alone: what keeps them from turning.`,
    inputs: { a_c: `${part}.crush`, [H]: housing[1], t_s: `${part}.wall` } as Paths,
    formula: `4 * ${STEEL.modulusText} * a_c * t_s / (pi * ${H}^2)`,
    compute: (n: Numbers) =>
      crushPressure({
        crush: n.a_c!,
        housingBore: n[H]!,
        shellWall: n.t_s!,
        elasticModulus: STEEL.elasticModulus,
      }),
    examples: [{ given: { a_c: "0.045 mm", [H]: "51 mm", t_s: "1.472 mm" }, expect: "6.68 MPa" }],
  });
}
