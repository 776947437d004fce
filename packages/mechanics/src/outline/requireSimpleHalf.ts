import { requireThat } from "../check/requireAll.ts";
import type { HalfElement } from "./halfOutline.ts";
import { curveU, curveV, outlineCurve } from "./OutlineCurve.ts";
import type { RodPoint } from "./RodOutline.ts";

/** Chords an arc is checked with: its chords lie within 0.5 % of the radius of an arc of half a turn. */
const chordsPerArc = 16;

interface Chord {
  readonly a: RodPoint;
  readonly b: RodPoint;
  readonly vertex: number;
}

function chordsOf({ element, vertex }: HalfElement): readonly Chord[] {
  const curve = outlineCurve(element);
  const count = element.kind === "arc" ? chordsPerArc : 1;
  const at = (i: number): RodPoint => ({ u: curveU(curve, i / count), v: curveV(curve, i / count) });
  return Array.from({ length: count }, (_, i) => ({ a: at(i), b: at(i + 1), vertex }));
}

/** Twice the area of the triangle a, b, p: its sign tells the side of the line a-b that p lies on. */
function turnOf(a: RodPoint, b: RodPoint, p: RodPoint): number {
  return (b.u - a.u) * (p.v - a.v) - (b.v - a.v) * (p.u - a.u);
}

function overlaps(a: number, b: number, c: number, d: number): boolean {
  return Math.max(Math.min(a, b), Math.min(c, d)) <= Math.min(Math.max(a, b), Math.max(c, d));
}

function cross(p: Chord, q: Chord): boolean {
  return (
    overlaps(p.a.u, p.b.u, q.a.u, q.b.u) &&
    overlaps(p.a.v, p.b.v, q.a.v, q.b.v) &&
    turnOf(p.a, p.b, q.a) * turnOf(p.a, p.b, q.b) <= 0 &&
    turnOf(q.a, q.b, p.a) * turnOf(q.a, q.b, p.b) <= 0
  );
}

/**
 * Checks that half an outline neither crosses or touches itself nor dips across the rod's axis.
 * @param half elements of the half in order
 * @param name name of the list in messages
 * @throws RangeError naming the point whose edge dips or crosses
 *
 * Source: plane geometry.
 */
export function requireSimpleHalf(half: readonly HalfElement[], name: string): void {
  const chords = half.flatMap(chordsOf);
  const size = Math.max(...chords.map(({ b }) => Math.hypot(b.u, b.v)));
  for (const { a, vertex } of chords) {
    requireThat(a.v >= -1e-9 * size, `${name}[${vertex}].v`, a.v, "an edge that stays at v >= 0 all along");
  }
  for (let i = 2; i < chords.length; i++) {
    for (let j = 0; j < i - 1; j++) {
      const late = chords[i]!;
      const early = chords[j]!;
      requireThat(
        !cross(late, early),
        `${name}[${late.vertex}].u`,
        late.b.u,
        `an outline that does not cross itself, but the edge to this point meets the edge to ${name}[${early.vertex}]`,
      );
    }
  }
}
