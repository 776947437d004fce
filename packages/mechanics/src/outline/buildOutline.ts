import { halfOutline } from "./halfOutline.ts";
import { curveU, curveV, outlineCurve } from "./OutlineCurve.ts";
import type { OutlineElement, OutlineVertex, RodOutline, RodPoint } from "./RodOutline.ts";
import { requireSimpleHalf } from "./requireSimpleHalf.ts";

function half(vertices: readonly OutlineVertex[], name: string): readonly OutlineElement[] {
  const elements = halfOutline(vertices, name);
  requireSimpleHalf(elements, name);
  return elements.map(({ element }) => element);
}

/** The element on the other side of the rod's axis, travelled the other way. */
function mirrored(element: OutlineElement): OutlineElement {
  const across = ({ u, v }: RodPoint): RodPoint => ({ u, v: -v });
  if (element.kind === "segment") {
    return { kind: "segment", from: across(element.to), to: across(element.from) };
  }
  const { centre, radius, startAngle, sweepAngle } = element;
  // Mirroring and turning the travel round each reverse the sense, so the sweep keeps its sign.
  return { kind: "arc", centre: across(centre), radius, startAngle: -startAngle - sweepAngle, sweepAngle };
}

function ends(elements: readonly OutlineElement[]): { readonly first: RodPoint; readonly last: RodPoint } {
  const start = outlineCurve(elements[0]!);
  const end = outlineCurve(elements[elements.length - 1]!);
  return {
    first: { u: curveU(start, 0), v: curveV(start, 0) },
    last: { u: curveU(end, 1), v: curveV(end, 1) },
  };
}

function bridge(from: RodPoint, to: RodPoint): readonly OutlineElement[] {
  return Math.hypot(to.u - from.u, to.v - from.v) === 0 ? [] : [{ kind: "segment", from, to }];
}

/**
 * Closed outline of the big end and the lower beam from the points of one half, or of both.
 * The ends of the two halves are joined by straight lines: an outline that stops part way up the beam
 * is cut off square there, and nothing beyond that line is checked.
 * @param vertices points of the half at v >= 0 in order along it [m], usually from the cap to the beam
 * @param otherSide points of the half at v <= 0, listed with v >= 0 and in the same order;
 *   left out when the rod is alike on both sides
 * @returns the closed outline: first half, joint, other half travelled back, joint
 * @throws RangeError naming the point, the value and what was expected: fewer than 2 points, v below 0,
 *   an arc radius below half its chord, a corner radius too large for its edges, an outline crossing itself
 *
 * Source: plane geometry.
 */
export function buildOutline(
  vertices: readonly OutlineVertex[],
  otherSide?: readonly OutlineVertex[] | undefined,
): RodOutline {
  const near = half(vertices, "vertices");
  const far = (otherSide === undefined ? near : half(otherSide, "otherSide")).map(mirrored).reverse();
  const nearEnds = ends(near);
  const farEnds = ends(far);
  return {
    elements: [
      ...near,
      ...bridge(nearEnds.last, farEnds.first),
      ...far,
      ...bridge(farEnds.last, nearEnds.first),
    ],
  };
}
