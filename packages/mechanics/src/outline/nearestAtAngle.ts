import { distanceAt } from "./distanceAt.ts";
import { leastOnInterval } from "./leastOnInterval.ts";
import type { OutlineCurve } from "./OutlineCurve.ts";
import { rodFrame } from "./rodFrame.ts";
import { nearestOf, type RodNearest, type RodSweep } from "./sweepOutline.ts";

/** Samples on an element: one for each of so many parts of the outline's reach. */
const samplesPerReach = 60;

/**
 * Nearest approach of the rod to an obstacle at one crank angle.
 * @param sweep the mechanism, the outline and the parts of the obstacle
 * @param curves the curves of the outline
 * @param angle crank angle [rad]
 *
 * Source: plane geometry.
 */
export function nearestAtAngle(sweep: RodSweep, curves: readonly OutlineCurve[], angle: number): RodNearest {
  const frame = rodFrame(sweep.crank, angle);
  const reach = Math.max(...curves.map((curve) => curve.reach));
  const trials = sweep.obstacle.flatMap((distance) =>
    curves.map((curve) => ({
      curve,
      distance,
      bound: distanceAt(frame, curve, 0.5, distance) - curve.length / 2,
    })),
  );
  trials.sort((a, b) => a.bound - b.bound);
  let best = { angle, t: 0, clearance: Number.POSITIVE_INFINITY };
  let bestCurve = curves[0]!;
  for (const { curve, distance, bound } of trials) {
    if (bound > best.clearance) break;
    const count = Math.max(6, Math.ceil((samplesPerReach * curve.length) / reach));
    const { at, value } = leastOnInterval((t) => distanceAt(frame, curve, t, distance), 0, 1, count);
    if (value < best.clearance) {
      best = { angle, t: at, clearance: value };
      bestCurve = curve;
    }
  }
  return nearestOf(sweep, bestCurve, best);
}
