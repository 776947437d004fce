import type { OutlineArc, OutlineElement, OutlineSegment, RodOutline } from "./RodOutline.ts";

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
  /** the point half way along it [m], which sweeps ask for at every angle */
  readonly middleU: number;
  readonly middleV: number;
}

/** What a point on a curve takes of it. */
type Line = Omit<OutlineCurve, "length" | "reach" | "middleU" | "middleV">;

/**
 * u of a point on a curve.
 * @param curve a line or an arc of the outline
 * @param t share of the curve [-], 0 at its start and 1 at its end
 * @returns u in the frame of the rod [m]
 * @throws never: unchecked, buildOutline checks what it is given
 *
 * Source: plane geometry.
 */
export function curveU(curve: Line, t: number): number {
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
export function curveV(curve: Line, t: number): number {
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
  const line = element.kind === "arc" ? lineOfArc(element) : lineOfSegment(element);
  const { u, v, du, dv, radius, sweep } = line;
  return {
    ...line,
    length: radius === 0 ? Math.hypot(du, dv) : radius * Math.abs(sweep),
    reach: radius === 0 ? Math.max(Math.hypot(u, v), Math.hypot(u + du, v + dv)) : Math.hypot(u, v) + radius,
    middleU: curveU(line, 0.5),
    middleV: curveV(line, 0.5),
  };
}

const lineOfArc = ({ centre, radius, startAngle, sweepAngle }: OutlineArc): Line => ({
  ...centre,
  du: 0,
  dv: 0,
  radius,
  start: startAngle,
  sweep: sweepAngle,
});

const lineOfSegment = ({ from, to }: OutlineSegment): Line => ({
  ...from,
  du: to.u - from.u,
  dv: to.v - from.v,
  radius: 0,
  start: 0,
  sweep: 0,
});

const kept = new WeakMap<RodOutline, readonly OutlineCurve[]>();

/**
 * The curves of all elements of an outline, made once for each outline.
 * @param outline a closed outline
 * @returns one curve for each element
 * @throws never: unchecked, buildOutline checks what it is given
 *
 * Source: plane geometry.
 */
export function outlineCurves(outline: RodOutline): readonly OutlineCurve[] {
  const curves = kept.get(outline) ?? outline.elements.map(outlineCurve);
  kept.set(outline, curves);
  return curves;
}
