import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Bending stress in a piston ring opposite its gap when it presses evenly on its bore, 3 p (D / t)^2.
 * @param input.pressure of the ring on the bore [Pa], > 0
 * @param input.bore [m], > 0
 * @param input.radialThickness of the ring [m], > 0
 * @returns stress [Pa]
 * @throws RangeError when a value is not above zero
 *
 * Source: Khurmi & Gupta, A Textbook of Machine Design, as t = D sqrt(3 p / sigma).
 */
export function ringBendingStress(input: {
  pressure: number;
  bore: number;
  radialThickness: number;
}): number {
  const { pressure, bore, radialThickness } = input;
  requireAll(positive, { pressure, bore, radialThickness });
  return 3 * pressure * (bore / radialThickness) ** 2;
}
