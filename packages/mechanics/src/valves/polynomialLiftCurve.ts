import { finite, positive, requireAll } from "../check/requireAll.ts";
import { fourStrokeCycle, withinCycle } from "./fourStrokeCycle.ts";
import type { LiftCurve, LiftState } from "./LiftCurve.ts";
import type { LiftDuration } from "./standInLiftCurve.ts";

const shut: LiftState = { lift: 0, slope: 0, curvature: 0 };

/**
 * Lift curve from one duration and the greatest lift: the polynomial of degrees 3, 4, 5 and 6 for one dwell,
 * L = L_max (1 - x^2)^3 with x from -1 to 1 over the time off the seat. Lift, speed and acceleration are zero at the
 * seat. For a first look only: a real lobe is fuller or slimmer at the same duration.
 * @param input.greatestLift at the valve [m], > 0
 * @param input.centre crank angle of the greatest lift from overlap top dead centre [rad]: + the lobe centre
 * of an inlet, - that of an exhaust
 * @param input.duration [rad], > 0, at a lift [m] above zero and below the greatest
 * @returns the curve and its duration at the seat [rad]
 * @throws RangeError when a value is out of range, or the valve would stay open for more than the cycle
 *
 * Source: Norton, Design of Machinery, the 3-4-5-6 polynomial of a single-dwell cam, from memory.
 */
export function polynomialLiftCurve(input: {
  greatestLift: number;
  centre: number;
  duration: LiftDuration;
}): LiftCurve & { readonly seatDuration: number } {
  const { greatestLift, centre, duration } = input;
  requireAll(positive, { greatestLift });
  requireAll(finite, { centre });
  requireAll(positive, { "duration.duration": duration.duration });
  requireAll({ above: 0, below: greatestLift }, { "duration.lift": duration.lift });
  const seatDuration = duration.duration / Math.sqrt(1 - Math.cbrt(duration.lift / greatestLift));
  requireAll({ below: fourStrokeCycle }, { seatDuration });
  const half = seatDuration / 2;
  const at = (angle: number): LiftState => {
    if (!Number.isFinite(angle)) requireAll(finite, { angle });
    const x = withinCycle(angle - centre, -fourStrokeCycle / 2) / half;
    if (Math.abs(x) >= 1) return shut;
    const left = 1 - x ** 2;
    return {
      lift: greatestLift * left ** 3,
      slope: (-6 * greatestLift * x * left ** 2) / half,
      curvature: (6 * greatestLift * left * (5 * x ** 2 - 1)) / half ** 2,
    };
  };
  return { seatDuration, at };
}
