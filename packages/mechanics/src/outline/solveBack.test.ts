import { goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { mm } from "../check/support.test-support.ts";
import { buildOutline } from "./buildOutline.ts";
import { curveU, curveV, outlineCurves } from "./OutlineCurve.ts";
import { outlineFarthestPoint } from "./outlineFarthestPoint.ts";

/** An invented half outline whose farthest point is its widest corner. */
const points = [
  [-33, 0],
  [-28, 22],
  [-24, 38],
  [20, 30],
  [60, 10],
] as const;
const outlineWith = (v: { scale: number; wide: number }) =>
  buildOutline(
    points.map(([u, half], i) => ({ u: v.scale * u * mm, v: v.scale * (i === 2 ? v.wide : half) * mm })),
  );
/** The big end, without the beam. */
const BIG_END = 20 * mm;

const sizes = { scale: goesAs(1, 0.6, 1), wide: rises(36, 44) };
solvesBack(outlineFarthestPoint, sizes, (v) => outlineFarthestPoint(outlineWith(v), BIG_END).radius);
// The way round the outline, by the ends of its pieces.
const around = (v: { scale: number; wide: number }) =>
  outlineCurves(outlineWith(v)).reduce((sum, curve) => {
    const [u, w] = [curveU(curve, 1) - curveU(curve, 0), curveV(curve, 1) - curveV(curve, 0)];
    return sum + Math.hypot(u, w);
  }, 0);
solvesBack(buildOutline, sizes, around);
solvesBack(outlineCurves, sizes, around);
solvesBack(curveU, sizes, around);
solvesBack(curveV, sizes, around);
