import { finite, positive, requireAll, requireThat } from "../check/requireAll.ts";
import { fourStrokeCycle, withinCycle } from "./fourStrokeCycle.ts";
import type { LiftCurve, LiftState } from "./LiftCurve.ts";

/** How long the valve is above a stated lift. */
export interface LiftDuration {
  /** crank angle [rad] */
  readonly duration: number;
  /** valve lift at which it is stated [m] */
  readonly lift: number;
}

/** The stand-in curve with its two constants. */
export interface StandInLiftCurve extends LiftCurve {
  /** exponent p [-], above 1 */
  readonly exponent: number;
  /** crank angle from leaving the seat to reaching it D_0 [rad] */
  readonly seatDuration: number;
}

const shut: LiftState = { lift: 0, slope: 0, curvature: 0 };

/**
 * Seat duration at which the curve has both durations. The ratio of the logarithms falls from infinity at the
 * longer duration as the seat duration grows, so there is at most one answer.
 */
function solveSeatDuration(longer: LiftDuration, shorter: LiftDuration, greatestLift: number): number {
  const wanted = Math.log(longer.lift / greatestLift) / Math.log(shorter.lift / greatestLift);
  const logCosine = (duration: number, seat: number) => Math.log(Math.cos((Math.PI * duration) / (2 * seat)));
  const ratio = (seat: number) => logCosine(longer.duration, seat) / logCosine(shorter.duration, seat);
  requireThat(
    ratio(fourStrokeCycle) < wanted,
    "shorter.duration",
    shorter.duration,
    "shorter: a curve through both would keep the valve open for more than the cycle",
  );
  let low = longer.duration;
  let high = fourStrokeCycle;
  for (let middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
    if (ratio(middle) > wanted) low = middle;
    else high = middle;
  }
  return high;
}

/**
 * Stand-in lift curve until a lift table is measured: L = L_max cos(pi (theta - theta_c) / D_0)^p, with p and
 * D_0 from two durations. For a first look only, never for the final valve clearance: it knows no ramps, no
 * lash and no asymmetry, and these change the last half millimetre.
 * @param input.greatestLift at the valve [m], > 0
 * @param input.centre crank angle of the greatest lift from overlap top dead centre [rad]: + the lobe centre
 * of an inlet, - that of an exhaust
 * @param input.longer duration [rad] at the lower lift [m], > 0 and shorter than the cycle
 * @param input.shorter duration [rad] at the higher lift [m], below the greatest
 * @returns the curve, its exponent and its seat duration
 * @throws RangeError when a value is out of range, or no curve with p > 1 has both durations (at p <= 1 the
 * valve would leave its seat with a jump in speed)
 *
 * Source: plane geometry.
 */
export function standInLiftCurve(input: {
  greatestLift: number;
  centre: number;
  longer: LiftDuration;
  shorter: LiftDuration;
}): StandInLiftCurve {
  const { greatestLift, centre, longer, shorter } = input;
  requireAll(positive, { greatestLift });
  requireAll(finite, { centre });
  requireAll({ above: 0, below: fourStrokeCycle }, { "longer.duration": longer.duration });
  requireAll({ above: 0, below: longer.duration }, { "shorter.duration": shorter.duration });
  requireAll({ above: 0, below: greatestLift }, { "shorter.lift": shorter.lift });
  requireAll({ above: 0, below: shorter.lift }, { "longer.lift": longer.lift });
  const seatDuration = solveSeatDuration(longer, shorter, greatestLift);
  const rate = Math.PI / seatDuration;
  // From the shorter duration: the cosine at the longer one loses digits near the seat.
  const exponent = Math.log(shorter.lift / greatestLift) / Math.log(Math.cos((rate * shorter.duration) / 2));
  requireThat(exponent > 1, "shorter.duration", shorter.duration, "shorter: the exponent must be above 1");

  const at = (angle: number): LiftState => {
    if (!Number.isFinite(angle)) requireAll(finite, { angle });
    const fromCentre = withinCycle(angle - centre, -fourStrokeCycle / 2);
    if (Math.abs(fromCentre) >= seatDuration / 2) return shut;
    const cosine = Math.cos(rate * fromCentre);
    const sine = Math.sin(rate * fromCentre);
    const lift = greatestLift * cosine ** exponent;
    return {
      lift,
      slope: (-exponent * rate * lift * sine) / cosine,
      curvature: exponent * rate ** 2 * lift * ((exponent - 1) * (sine / cosine) ** 2 - 1),
    };
  };
  return { exponent, seatDuration, at };
}
