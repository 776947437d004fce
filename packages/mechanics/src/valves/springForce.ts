import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/** A valve spring, or nested springs taken together. */
export interface ValveSpring {
  /** force with the valve shut [N], >= 0 */
  readonly seatForce: number;
  /** rate [N/m], > 0 */
  readonly springRate: number;
}

/**
 * Checks a valve spring.
 * @param spring its seat force and rate
 * @throws RangeError naming the number that is out of range
 *
 * Source: definition.
 */
export function requireValveSpring({ seatForce, springRate }: ValveSpring): void {
  requireAll(notNegative, { seatForce });
  requireAll(positive, { springRate });
}

/**
 * Force of a valve spring of constant rate: F = F_s + k L. Conical and beehive springs grow stiffer as coils
 * close: take their measured force instead.
 * @param input.seatForce F_s [N], >= 0
 * @param input.springRate k [N/m], > 0
 * @param input.lift at the valve L [m], >= 0
 * @returns force [N]
 * @throws RangeError when a value is out of range
 *
 * Source: definition of the spring rate.
 */
export function springForce(input: ValveSpring & { readonly lift: number }): number {
  const { seatForce, springRate, lift } = input;
  requireValveSpring(input);
  requireAll(notNegative, { lift });
  return seatForce + springRate * lift;
}
