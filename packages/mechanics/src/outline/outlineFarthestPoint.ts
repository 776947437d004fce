import { requireThat } from "../check/requireAll.ts";
import { curveU, curveV, type OutlineCurve, outlineCurves } from "./OutlineCurve.ts";
import type { RodOutline, RodPoint } from "./RodOutline.ts";

/** The t of a direction seen from an arc's centre; above 1 when the arc does not reach it. */
function parameterOf({ start, sweep }: OutlineCurve, angle: number): number {
  const turned = (angle - start) * Math.sign(sweep);
  return (turned - 2 * Math.PI * Math.floor(turned / (2 * Math.PI))) / Math.abs(sweep);
}

/** The t at which a curve can be farthest from the big-end centre, or is cut by the line u = limit. */
function candidates(curve: OutlineCurve, limit: number): readonly number[] {
  if (curve.radius === 0) return [0, 1, (limit - curve.u) / curve.du];
  const cut = Math.acos((limit - curve.u) / curve.radius);
  return [0, 1, ...[Math.atan2(curve.v, curve.u), cut, -cut].map((angle) => parameterOf(curve, angle))];
}

/**
 * Point of the outline farthest from the big-end centre (R_be of the screening disc).
 * @param outline outline of the rod
 * @param uAtMost only points with u up to this count [m]; the big end alone is had with about 0.2 of
 *   the rod length
 * @returns the distance [m] and the point
 * @throws RangeError when no point of the outline has u <= uAtMost
 *
 * Source: plane geometry; 0.2 of the rod length: common practice.
 */
export function outlineFarthestPoint(
  outline: RodOutline,
  uAtMost: number = Number.POSITIVE_INFINITY,
): { readonly radius: number; readonly point: RodPoint } {
  let radius = -1;
  let point: RodPoint = { u: 0, v: 0 };
  for (const curve of outlineCurves(outline)) {
    for (const t of candidates(curve, uAtMost)) {
      if (!(t >= 0 && t <= 1)) continue;
      const u = curveU(curve, t);
      const v = curveV(curve, t);
      const isWithin = u <= uAtMost + 1e-12 * curve.reach;
      if (isWithin && Math.hypot(u, v) > radius) {
        radius = Math.hypot(u, v);
        point = { u, v };
      }
    }
  }
  requireThat(radius >= 0, "uAtMost", uAtMost, "at least the least u of the outline");
  return { radius, point };
}
