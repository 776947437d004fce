import { finite, notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";
import type { OutlineArc, OutlineElement, OutlineVertex, RodPoint } from "./RodOutline.ts";

/** An element of half an outline and the index of the vertex it leads to or rounds. */
export interface HalfElement {
  readonly element: OutlineElement;
  readonly vertex: number;
}

const isArcEdge = (vertex: OutlineVertex | undefined): boolean => vertex?.arcRadius !== undefined;

function requireVertices(vertices: readonly OutlineVertex[], name: string): void {
  requireThat(vertices.length >= 2, `${name}.length`, vertices.length, "at least 2 points");
  for (const [i, { u, v, cornerRadius, arcRadius }] of vertices.entries()) {
    requireAll(finite, { [`${name}[${i}].u`]: u });
    requireAll(notNegative, { [`${name}[${i}].v`]: v });
    if (cornerRadius !== undefined) requireAll(notNegative, { [`${name}[${i}].cornerRadius`]: cornerRadius });
    if (arcRadius !== undefined) {
      requireThat(i > 0, `${name}[0].arcRadius`, arcRadius, "none, as no edge leads to the first point");
      requireAll(positive, { [`${name}[${i}].arcRadius`]: arcRadius });
    }
    const before = vertices[i - 1];
    if (before !== undefined) {
      const length = Math.hypot(u - before.u, v - before.v);
      requireThat(length > 0, `${name}[${i}].u`, u, "a point apart from the one before");
    }
  }
}

/** +1 when the listed half runs with its metal on the right (cap to beam), -1 the other way round. */
function travelSense(vertices: readonly OutlineVertex[]): number {
  let area = 0;
  for (let i = 1; i < vertices.length; i++) {
    const a = vertices[i - 1]!;
    const b = vertices[i]!;
    area += ((a.v + b.v) / 2) * (b.u - a.u);
  }
  const sense = area === 0 ? vertices[vertices.length - 1]!.u - vertices[0]!.u : area;
  return sense < 0 ? -1 : 1;
}

function arcEdge(from: RodPoint, to: OutlineVertex, sense: number, name: string): OutlineArc {
  const du = to.u - from.u;
  const dv = to.v - from.v;
  const chord = Math.hypot(du, dv);
  const radius = to.arcRadius!;
  requireThat(radius >= chord / 2, name, radius, `at least half the chord, ${chord / 2}`);
  // The centre lies on the metal's side of the chord, so that the shorter arc bulges outwards.
  const back = (sense * Math.sqrt(radius * radius - (chord * chord) / 4)) / chord;
  const centre = { u: (from.u + to.u) / 2 + dv * back, v: (from.v + to.v) / 2 - du * back };
  return {
    kind: "arc",
    centre,
    radius,
    startAngle: Math.atan2(from.v - centre.v, from.u - centre.u),
    sweepAngle: -sense * 2 * Math.asin(Math.min(1, chord / (2 * radius))),
  };
}

interface Corner {
  /** length the rounding takes off both edges [m] */
  readonly setback: number;
  readonly arc?: OutlineArc;
}

function roundCorner(vertices: readonly OutlineVertex[], i: number, name: string): Corner {
  const corner = vertices[i]!;
  const radius = corner.cornerRadius ?? 0;
  if (radius === 0) return { setback: 0 };
  const before = vertices[i - 1];
  const after = vertices[i + 1];
  const isBetweenEdges =
    before !== undefined && after !== undefined && !isArcEdge(corner) && !isArcEdge(after);
  requireThat(isBetweenEdges, name, radius, "a rounded corner only between two straight edges");
  const inLength = Math.hypot(corner.u - before!.u, corner.v - before!.v);
  const outLength = Math.hypot(after!.u - corner.u, after!.v - corner.v);
  const du = (corner.u - before!.u) / inLength;
  const dv = (corner.v - before!.v) / inLength;
  const eu = (after!.u - corner.u) / outLength;
  const ev = (after!.v - corner.v) / outLength;
  const turn = Math.atan2(du * ev - dv * eu, du * eu + dv * ev);
  const setback = radius * Math.tan(Math.abs(turn) / 2);
  const least = Math.min(inLength, outLength);
  requireThat(
    setback <= least,
    name,
    radius,
    `at most ${(radius * least) / setback} for the edges beside it`,
  );
  if (turn === 0) return { setback: 0 };
  const side = Math.sign(turn);
  const start = { u: corner.u - du * setback, v: corner.v - dv * setback };
  const centre = { u: start.u - dv * radius * side, v: start.v + du * radius * side };
  const startAngle = Math.atan2(start.v - centre.v, start.u - centre.u);
  return { setback, arc: { kind: "arc", centre, radius, startAngle, sweepAngle: turn } };
}

/**
 * Elements of one half of the outline, corners rounded and arc edges laid out.
 * @param vertices points of the half in order
 * @param name name of the list in messages
 * @throws RangeError naming the point and the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function halfOutline(vertices: readonly OutlineVertex[], name: string): readonly HalfElement[] {
  requireVertices(vertices, name);
  const sense = travelSense(vertices);
  const corners = vertices.map((_, i) => roundCorner(vertices, i, `${name}[${i}].cornerRadius`));
  const half: HalfElement[] = [];
  for (let i = 1; i < vertices.length; i++) {
    const from = vertices[i - 1]!;
    const to = vertices[i]!;
    if (isArcEdge(to)) {
      half.push({ element: arcEdge(from, to, sense, `${name}[${i}].arcRadius`), vertex: i });
      continue;
    }
    const length = Math.hypot(to.u - from.u, to.v - from.v);
    const first = corners[i - 1]!.setback / length;
    const last = 1 - corners[i]!.setback / length;
    // Two roundings may meet in the middle of an edge; rounding of the numbers must not refuse that.
    requireThat(
      first <= last + 1e-12,
      `${name}[${i}].cornerRadius`,
      to.cornerRadius ?? 0,
      "roundings that leave room for each other on the edge before it",
    );
    const at = (t: number): RodPoint => ({
      u: from.u + (to.u - from.u) * t,
      v: from.v + (to.v - from.v) * t,
    });
    if (first < last) half.push({ element: { kind: "segment", from: at(first), to: at(last) }, vertex: i });
    const { arc } = corners[i]!;
    if (arc !== undefined) half.push({ element: arc, vertex: i });
  }
  return half;
}
