import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Rise of the crown's edge when the piston rocks across its skirt clearance, (B / 2)(C_s / L_s).
 * @param input.bore finished bore [m], > 0
 * @param input.skirtClearance running diametral clearance of the skirt [m], >= 0
 * @param input.skirtLength loaded length of the skirt [m], > 0
 * @returns rise of the edge [m]; small angles
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function pistonRock(input: { bore: number; skirtClearance: number; skirtLength: number }): number {
  const { bore, skirtClearance, skirtLength } = input;
  requireAll(positive, { bore, skirtLength });
  requireAll(notNegative, { skirtClearance });
  return (bore / 2) * (skirtClearance / skirtLength);
}
