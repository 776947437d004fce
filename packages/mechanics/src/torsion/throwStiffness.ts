import { notNegative, positive, requireAll } from "../check/requireAll.ts";
import { overlapSection } from "./overlapStiffness.ts";

/** Sizes of one throw: half a journal, web, crankpin, web, half a journal. */
export interface CrankThrow {
  /** length of the main journal [m], > 0 */
  readonly journalLength: number;
  /** [m], > 0 */
  readonly journalDiameter: number;
  /** bore through the main journal [m], >= 0 and below the journal; 0 when solid */
  readonly journalBore: number;
  /** length of the crankpin [m], > 0 */
  readonly crankpinLength: number;
  /** [m], > 0 */
  readonly crankpinDiameter: number;
  /** bore through the crankpin [m], >= 0 and below the crankpin; 0 when solid */
  readonly crankpinBore: number;
  /** thickness of one web along the crankshaft [m], > 0 */
  readonly webThickness: number;
  /** width of the web across the throw [m], > 0 */
  readonly webWidth: number;
  /** [m], > 0 */
  readonly throwRadius: number;
  /** shear modulus G [Pa], > 0 */
  readonly shearModulus: number;
}

function requireThrow(input: CrankThrow): void {
  const { journalLength, journalDiameter, journalBore, crankpinLength, crankpinDiameter, crankpinBore } =
    input;
  const { webThickness, webWidth, throwRadius, shearModulus } = input;
  requireAll(positive, { journalLength, journalDiameter, crankpinLength, crankpinDiameter });
  requireAll(positive, { webThickness, webWidth, throwRadius, shearModulus });
  requireAll({ ...notNegative, below: journalDiameter }, { journalBore });
  requireAll({ ...notNegative, below: crankpinDiameter }, { crankpinBore });
}

/** Stiffness from the lengths that journal and crankpin count with, and what the webs give, 32/(pi G) taken out. */
function stiffnessOf(input: CrankThrow, parts: { journal: number; crankpin: number; webs: number }): number {
  const compliance =
    parts.journal / (input.journalDiameter ** 4 - input.journalBore ** 4) +
    parts.crankpin / (input.crankpinDiameter ** 4 - input.crankpinBore ** 4) +
    parts.webs;
  return (Math.PI * input.shearModulus) / (32 * compliance);
}

/** What webs of an even section give by a length of them. */
const webOf = ({ webThickness, webWidth }: CrankThrow, length: number) =>
  length / (webThickness * webWidth ** 3);

/**
 * Torsional stiffness of a crankshaft throw from journal centre to journal centre by Carter's formula,
 * 1/k = 32/(pi G) ((L_j + 0.8 h)/(D_j^4 - d_j^4) + 0.75 L_c/(D_c^4 - d_c^4) + 1.5 R/(h W^3)). Screening, some
 * 20 % either way; the two formulas differ, and their difference shows how far to trust them.
 * @param input sizes of the throw
 * @returns stiffness [N m/rad]
 * @throws RangeError when a value is out of range
 *
 * Source: Carter, from memory.
 */
export function throwStiffnessCarter(input: CrankThrow): number {
  requireThrow(input);
  return stiffnessOf(input, {
    journal: input.journalLength + 0.8 * input.webThickness,
    crankpin: 0.75 * input.crankpinLength,
    webs: webOf(input, 1.5 * input.throwRadius),
  });
}

/** Length of web that journal and crankpin take up in Ker Wilson's formula. */
const hiddenWeb = (input: CrankThrow) => 0.2 * (input.journalDiameter + input.crankpinDiameter);

const kerWilsonParts = (input: CrankThrow) => ({
  journal: input.journalLength + 0.4 * input.journalDiameter,
  crankpin: input.crankpinLength + 0.4 * input.crankpinDiameter,
  webs: webOf(input, Math.max(0, input.throwRadius - hiddenWeb(input))),
});

/**
 * Torsional stiffness of a crankshaft throw from journal centre to journal centre by Ker Wilson's formula,
 * 1/k = 32/(pi G) ((L_j + 0.4 D_j)/(D_j^4 - d_j^4) + (L_c + 0.4 D_c)/(D_c^4 - d_c^4)
 * + (R - 0.2 (D_j + D_c))/(h W^3)). Screening, some 20 % either way.
 * @param input sizes of the throw; throwRadius must exceed 0.2 (D_j + D_c), or no web is left to twist
 * @returns stiffness [N m/rad]
 * @throws RangeError when a value is out of range
 *
 * Source: Ker Wilson, Practical Solution of Torsional Vibration Problems, from memory.
 */
export function throwStiffnessKerWilson(input: CrankThrow): number {
  requireThrow(input);
  requireAll({ above: hiddenWeb(input) }, { throwRadius: input.throwRadius });
  return stiffnessOf(input, kerWilsonParts(input));
}

/**
 * Torsional stiffness of a crankshaft throw through the overlap of main journal and crankpin: journal, crankpin and the
 * straight core that both share through the webs, in a row, 1/k = 32/(pi G) (L_j/(D_j^4 - d_j^4)
 * + L_c/(D_c^4 - d_c^4)) + 2 h/(G J). The web around the core is left out, so a throw is at least about as stiff: with
 * little overlap far stiffer. Without throw it would be the plain shaft.
 * @param input sizes of the throw; bores are taken to end at the webs
 * @returns stiffness [N m/rad]; 0 when journal and crankpin do not overlap
 * @throws RangeError when a value is out of range
 *
 * Source: springs in a row; Saint-Venant's torsion of the core ({@link overlapSection}).
 */
export function throwStiffnessThroughOverlap(input: CrankThrow): number {
  requireThrow(input);
  const { torsionConstant } = overlapSection(input);
  if (torsionConstant === 0) return 0;
  return stiffnessOf(input, {
    journal: input.journalLength,
    crankpin: input.crankpinLength,
    webs: (2 * input.webThickness * Math.PI) / (32 * torsionConstant),
  });
}

/**
 * Torsional stiffness of a crankshaft throw from journal centre to journal centre, the best of what is known: the mean
 * of Carter's and Ker Wilson's, and no less than the core through the overlap gives. Where so much overlaps that Ker
 * Wilson's formula has no web left, the web counts with no length in it.
 * @param input sizes of the throw
 * @returns stiffness [N m/rad], good to about 20 %
 * @throws RangeError when a value is out of range
 *
 * Source: {@link throwStiffnessCarter}, {@link throwStiffnessKerWilson}, {@link throwStiffnessThroughOverlap}.
 */
export function throwStiffness(input: CrankThrow): number {
  const mean = (throwStiffnessCarter(input) + stiffnessOf(input, kerWilsonParts(input))) / 2;
  return Math.max(mean, throwStiffnessThroughOverlap(input));
}
