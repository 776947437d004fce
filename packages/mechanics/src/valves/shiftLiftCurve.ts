import { finite, requireAll } from "../check/requireAll.ts";
import type { LiftCurve } from "./LiftCurve.ts";

/**
 * The same lift earlier or later: a camshaft advanced or retarded, or a curve timed from the piston's true top
 * dead centre, which with an offset pin line lies at topDeadCentre(crank).angle.
 * @param curve lift over the cycle
 * @param shift crank angle [rad], + later (retarded)
 * @returns the shifted curve
 * @throws RangeError when the shift is not finite
 *
 * Source: definition.
 */
export function shiftLiftCurve(curve: LiftCurve, shift: number): LiftCurve {
  requireAll(finite, { shift });
  return { at: (angle) => curve.at(angle - shift) };
}
