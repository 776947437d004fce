import { curveU, curveV, type OutlineCurve } from "./OutlineCurve.ts";

/** A disc about a point of the rod, in its frame [m]. */
export interface Disc {
  readonly u: number;
  readonly v: number;
  readonly radius: number;
}

/** A disc that holds some curves that follow each other. */
export interface StretchDisc extends Disc {
  /** index of its first curve, and of the first after it */
  readonly from: number;
  readonly to: number;
}

/** Discs that hold an outline. */
export interface OutlineDiscs {
  /** all of it, about a point of the rod's middle line: v is 0 */
  readonly whole: Disc;
  readonly stretches: readonly StretchDisc[];
}

/** Curves to a stretch: a few, so that their disc is small against the whole and still rules several out at once. */
const IN_A_STRETCH = 4;

const middle = (numbers: readonly number[]) => (Math.min(...numbers) + Math.max(...numbers)) / 2;

/** The ends of each curve. */
const endsOf = (curves: readonly OutlineCurve[]) =>
  curves.flatMap((curve) => [0, 1].map((t) => ({ u: curveU(curve, t), v: curveV(curve, t) })));

/** Farthest that a point of a curve can be from a point: a segment's is an end, an arc lies on its circle. */
const reachFrom = (curve: OutlineCurve, u: number, v: number): number =>
  curve.radius === 0
    ? Math.max(
        Math.hypot(curve.u - u, curve.v - v),
        Math.hypot(curve.u + curve.du - u, curve.v + curve.dv - v),
      )
    : Math.hypot(curve.u - u, curve.v - v) + curve.radius;

/** No point of an arc is farther from the middle of the arc than half its length: mostly nearer than its circle tells. */
const within = (curve: OutlineCurve, u: number, v: number): number =>
  Math.min(reachFrom(curve, u, v), Math.hypot(curve.middleU - u, curve.middleV - v) + curve.length / 2);

function discAbout(curves: readonly OutlineCurve[], u: number, v: number): Disc {
  return { u, v, radius: Math.max(...curves.map((curve) => within(curve, u, v))) };
}

const kept = new WeakMap<readonly OutlineCurve[], OutlineDiscs>();

/**
 * Discs that hold an outline, made once for each.
 * @param curves of the outline, at least one
 * @returns one for the whole, and smaller ones for its stretches
 * @throws never: unchecked, requireSweep checks what it is given
 *
 * Source: plane geometry.
 */
export function outlineDiscs(curves: readonly OutlineCurve[]): OutlineDiscs {
  const known = kept.get(curves);
  if (known !== undefined) return known;
  const whole = discAbout(curves, middle(endsOf(curves).map(({ u }) => u)), 0);
  const stretches: StretchDisc[] = [];
  for (let from = 0; from < curves.length; from += IN_A_STRETCH) {
    const to = Math.min(from + IN_A_STRETCH, curves.length);
    const some = curves.slice(from, to);
    const ends = endsOf(some);
    const about = discAbout(some, middle(ends.map(({ u }) => u)), middle(ends.map(({ v }) => v)));
    stretches.push({ ...about, from, to });
  }
  const discs = { whole, stretches };
  kept.set(curves, discs);
  return discs;
}
