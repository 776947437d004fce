import { largestRodAngle } from "../kinematics/rodAngle.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import type { OutlineCurve } from "./OutlineCurve.ts";

/** How far and how crookedly any point of a curve of the rod moves, over the whole turn. */
export interface MotionBounds {
  /** farthest way for each radian of crank angle [m/rad] */
  readonly perRadian: number;
  /** greatest second derivative of its place by the crank angle [m/rad2] */
  readonly bendOfTurn: number;
  /** by the crank angle and the share of the curve [m/rad] */
  readonly bendOfBoth: number;
  /** by the share of the curve twice [m] */
  readonly bendOfCurve: number;
}

/**
 * Bounds on the motion of the points of each curve: r for the centre of the big end, and their distance from it times the
 * rod's turning, d(phi)/d(theta) = r cos(theta) / (l cos(phi)) <= r / (l cos(phi_max)), whose own change is at most
 * r / (l cos(phi_max)) + (d(phi)/d(theta))^2 tan(phi_max).
 * @param crank the mechanism
 * @param curves of the rod's outline
 *
 * Source: plane geometry.
 */
export function motionBoundsOf(crank: SliderCrank, curves: readonly OutlineCurve[]): readonly MotionBounds[] {
  const { throwRadius, rodLength } = crank;
  const angle = largestRodAngle(crank);
  const turning = throwRadius / (rodLength * Math.cos(angle));
  const change = turning + turning * turning * Math.tan(angle);
  return curves.map((curve) => ({
    perRadian: throwRadius + curve.reach * turning,
    bendOfTurn: throwRadius + curve.reach * (change + turning * turning),
    bendOfBoth: curve.length * turning,
    bendOfCurve: curve.radius === 0 ? 0 : curve.length * Math.abs(curve.sweep),
  }));
}
