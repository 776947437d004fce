import { notNegative, positive, requireAll } from "../check/requireAll.ts";

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

/** Stiffness from the lengths that journal, crankpin and web count with. */
function stiffnessOf(input: CrankThrow, lengths: { journal: number; crankpin: number; web: number }): number {
  const compliance =
    lengths.journal / (input.journalDiameter ** 4 - input.journalBore ** 4) +
    lengths.crankpin / (input.crankpinDiameter ** 4 - input.crankpinBore ** 4) +
    lengths.web / (input.webThickness * input.webWidth ** 3);
  return (Math.PI * input.shearModulus) / (32 * compliance);
}

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
    web: 1.5 * input.throwRadius,
  });
}

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
  const hidden = 0.2 * (input.journalDiameter + input.crankpinDiameter);
  requireAll({ above: hidden }, { throwRadius: input.throwRadius });
  return stiffnessOf(input, {
    journal: input.journalLength + 0.4 * input.journalDiameter,
    crankpin: input.crankpinLength + 0.4 * input.crankpinDiameter,
    web: input.throwRadius - hidden,
  });
}
