import { notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";

/** One point of a torque curve. */
export interface TorquePoint {
  /** crankshaft speed [rad/s], > 0 */
  readonly angularSpeed: number;
  /** at the crankshaft [N m], >= 0 */
  readonly torque: number;
}

/** A torque curve: two points or more, their speeds ascending. Between two of them the torque runs straight. */
export type TorqueCurve = readonly TorquePoint[];

function requireCurve(curve: TorqueCurve): void {
  requireThat(curve.length >= 2, "curve", curve.length, "at least 2 points");
  curve.forEach(({ angularSpeed, torque }, i) => {
    requireAll(positive, { [`curve[${i}].angularSpeed`]: angularSpeed });
    requireAll(notNegative, { [`curve[${i}].torque`]: torque });
    const before = curve[i - 1]?.angularSpeed ?? 0;
    requireThat(angularSpeed > before, `curve[${i}].angularSpeed`, angularSpeed, `above ${before}`);
  });
}

/**
 * Torque at a speed within the curve.
 * @param input.curve the points
 * @param input.angularSpeed crankshaft speed [rad/s], from the first point's to the last's
 * @returns torque [N m]
 * @throws RangeError when the curve cannot be read so, or the speed lies outside of it: nothing is known there
 *
 * Source: straight lines between measured points, numerical practice (common practice).
 */
export function torqueOnCurve(input: { curve: TorqueCurve; angularSpeed: number }): number {
  const { curve, angularSpeed } = input;
  requireCurve(curve);
  const [first, last] = [curve[0]!, curve.at(-1)!];
  requireAll({ atLeast: first.angularSpeed, atMost: last.angularSpeed }, { angularSpeed });
  const above = curve.findIndex((point, i) => i > 0 && point.angularSpeed >= angularSpeed);
  const [from, to] = [curve[above - 1]!, curve[above]!];
  const share = (angularSpeed - from.angularSpeed) / (to.angularSpeed - from.angularSpeed);
  return from.torque + share * (to.torque - from.torque);
}

/**
 * The point of greatest torque, which is one of those given; of several alike the one at the lowest speed.
 * @param curve the points
 * @returns that point
 * @throws RangeError when the curve cannot be read so
 *
 * Source: definition.
 */
export function greatestTorque(curve: TorqueCurve): TorquePoint {
  requireCurve(curve);
  return curve.reduce((best, point) => (point.torque > best.torque ? point : best));
}

/**
 * The greatest power on the curve, which may lie between two points: where torque falls, power is a parabola.
 * @param curve the points
 * @returns power [W] and the crankshaft speed there [rad/s], the lowest of several alike
 * @throws RangeError when the curve cannot be read so
 *
 * Source: definition; the vertex of a parabola.
 */
export function greatestPower(curve: TorqueCurve): { power: number; angularSpeed: number } {
  requireCurve(curve);
  const at = ({ angularSpeed, torque }: TorquePoint) => ({ power: torque * angularSpeed, angularSpeed });
  const vertices = curve.slice(1).flatMap((to, i) => {
    const from = curve[i]!;
    const slope = (to.torque - from.torque) / (to.angularSpeed - from.angularSpeed);
    const angularSpeed = (from.angularSpeed - from.torque / slope) / 2;
    const isWithin = slope < 0 && angularSpeed > from.angularSpeed && angularSpeed < to.angularSpeed;
    return isWithin
      ? [{ angularSpeed, torque: from.torque + slope * (angularSpeed - from.angularSpeed) }]
      : [];
  });
  return [...curve, ...vertices]
    .map(at)
    .reduce((best, one) =>
      one.power > best.power || (one.power === best.power && one.angularSpeed < best.angularSpeed)
        ? one
        : best,
    );
}
