import type { OutlineElement, RodOutline } from "./RodOutline.ts";

/**
 * An outline element as plain numbers: a point is (u + du t, v + dv t) on a segment (radius 0) and
 * (u, v) + radius (cos, sin)(start + sweep t) on an arc, t from 0 to 1. The sweep reads points of
 * elements some ten thousand times for one answer, which this form makes cheap.
 */
export interface OutlineCurve {
  readonly u: number;
  readonly v: number;
  readonly du: number;
  readonly dv: number;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
  /** length along the element [m]: a step dt moves the point by length dt */
  readonly length: number;
  /** no point of the element is farther than this from the big-end centre [m] */
  readonly reach: number;
}

/**
 * u of a point on a curve.
 * @param curve a line or an arc of the outline
 * @param t share of the curve [-], 0 at its start and 1 at its end
 * @returns u in the frame of the rod [m]
 * @throws never: unchecked, buildOutline checks what it is given
 *
 * Source: plane geometry.
 */
export function curveU(curve: OutlineCurve, t: number): number {
  return curve.radius === 0
    ? curve.u + curve.du * t
    : curve.u + curve.radius * Math.cos(curve.start + curve.sweep * t);
}

/**
 * v of a point on a curve.
 * @param curve a line or an arc of the outline
 * @param t share of the curve [-], 0 at its start and 1 at its end
 * @returns v in the frame of the rod [m]
 * @throws never: unchecked, buildOutline checks what it is given
 *
 * Source: plane geometry.
 */
export function curveV(curve: OutlineCurve, t: number): number {
  return curve.radius === 0
    ? curve.v + curve.dv * t
    : curve.v + curve.radius * Math.sin(curve.start + curve.sweep * t);
}

/**
 * The curve of one outline element, as sweeps read it.
 * @param element a line or an arc
 * @returns the curve, with its length and the greatest distance of its points from the big end's centre [m]
 * @throws never: unchecked, buildOutline checks what it is given
 *
 * Source: plane geometry.
 */
export function outlineCurve(element: OutlineElement): OutlineCurve {
  if (element.kind === "arc") {
    const { centre, radius, startAngle, sweepAngle } = element;
    return {
      ...centre,
      du: 0,
      dv: 0,
      radius,
      start: startAngle,
      sweep: sweepAngle,
      length: radius * Math.abs(sweepAngle),
      reach: Math.hypot(centre.u, centre.v) + radius,
    };
  }
  const { from, to } = element;
  const du = to.u - from.u;
  const dv = to.v - from.v;
  return {
    ...from,
    du,
    dv,
    radius: 0,
    start: 0,
    sweep: 0,
    length: Math.hypot(du, dv),
    reach: Math.max(Math.hypot(from.u, from.v), Math.hypot(to.u, to.v)),
  };
}

/**
 * The curves of all elements of an outline.
 * @param outline a closed outline
 * @returns one curve for each element
 * @throws never: unchecked, buildOutline checks what it is given
 *
 * Source: plane geometry.
 */
export function outlineCurves(outline: RodOutline): readonly OutlineCurve[] {
  return outline.elements.map(outlineCurve);
}
