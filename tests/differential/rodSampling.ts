import type { OutlineVertex, RodToCylinder } from "@trialfit/mechanics";
import type { ListedGeometry } from "./rodGeometries.ts";

type Place = readonly [number, number];
/** A stretch of the outline: s from 0 to 1 gives (u, v). */
export interface Stretch {
  readonly at: (s: number) => Place;
  readonly length: number;
}

function line([u0, v0]: Place, [u1, v1]: Place): Stretch {
  return { at: (s) => [u0 + (u1 - u0) * s, v0 + (v1 - v0) * s], length: Math.hypot(u1 - u0, v1 - v0) };
}

/** The shorter arc over a chord, rising above it on the side that (nu, nv) points to. */
function bow(from: Place, to: Place, radius: number, [nu, nv]: Place): Stretch {
  const chord = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Place = [(to[0] - from[0]) / chord, (to[1] - from[1]) / chord];
  let rise: Place = [-along[1], along[0]];
  if (rise[0] * nu + rise[1] * nv < 0) rise = [along[1], -along[0]];
  const most = Math.asin(Math.min(1, chord / (2 * radius)));
  const at = (s: number): Place => {
    const angle = most * (2 * s - 1);
    const across = radius * Math.sin(angle);
    const height = radius * (Math.cos(angle) - Math.cos(most));
    const middle: Place = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    return [
      middle[0] + along[0] * across + rise[0] * height,
      middle[1] + along[1] * across + rise[1] * height,
    ];
  };
  return { at, length: 2 * radius * most };
}

function sideStretches(vertices: readonly OutlineVertex[], sign: number): readonly Stretch[] {
  const place = (i: number): Place => [vertices[i]!.u, vertices[i]!.v];
  const unit = (a: Place, b: Place): Place => {
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    return [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  };
  const stretches: Stretch[] = [];
  let start = place(0);
  for (let i = 1; i < vertices.length; i++) {
    const before = place(i - 1);
    const here = place(i);
    const { arcRadius, cornerRadius } = vertices[i]!;
    const [eu, ev] = unit(before, here);
    // Listed from the cap to the beam at v >= 0, the metal is to the right of travel.
    if (arcRadius !== undefined) stretches.push(bow(before, here, arcRadius, [-ev, eu]));
    let end = here;
    if (cornerRadius !== undefined && cornerRadius > 0) {
      const next = place(i + 1);
      const back = unit(here, before);
      const on = unit(here, next);
      const halfOpening = Math.acos(back[0] * on[0] + back[1] * on[1]) / 2;
      const off = cornerRadius / Math.tan(halfOpening);
      end = [here[0] + back[0] * off, here[1] + back[1] * off];
      const resume: Place = [here[0] + on[0] * off, here[1] + on[1] * off];
      stretches.push(bow(end, resume, cornerRadius, [-back[0] - on[0], -back[1] - on[1]]));
      stretches.push(line(start, end));
      start = resume;
      continue;
    }
    if (arcRadius === undefined) stretches.push(line(start, end));
    start = end;
  }
  return stretches.map(({ at, length }) => ({
    length,
    at: (s) => {
      const [u, v] = at(s);
      return [u, sign * v];
    },
  }));
}

/** The whole outline, worked out from the listed points and not from the product's elements. */
export function stretchesOf({ near, far }: ListedGeometry): readonly Stretch[] {
  const joint = (i: number, j: number) => line([near[i]!.u, near[i]!.v], [far[j]!.u, -far[j]!.v]);
  const joints = [joint(0, 0), joint(near.length - 1, far.length - 1)].filter(({ length }) => length > 0);
  return [...sideStretches(near, 1), ...sideStretches(far, -1), ...joints];
}

/** Math.hypot is some ten times slower and the lengths here cannot overflow. */
const length = (a: number, b: number): number => Math.sqrt(a * a + b * b);

/** Distance of (x, z) to the wall around the notch in plan, from feet on every line and arc it is made of. */
function planDistance(x: number, z: number, radius: number, floor: number, side: number): number {
  const toLine = (p: number, q: number, from: number, to: number, level: number) =>
    length(p - Math.min(Math.max(p, from), to), q - level);
  const corner = Math.sqrt(Math.max(0, radius ** 2 - side ** 2));
  // A floor inside the circle cuts nothing near the middle: up to here the bore's own wall stands.
  const uncut = Math.sqrt(Math.max(0, radius ** 2 - floor ** 2));
  const ways: number[] = [];
  for (const sx of [1, -1]) {
    for (const sz of [1, -1]) ways.push(toLine(sz * z, sx * x, uncut, side, floor));
    for (const sz of [1, -1]) ways.push(toLine(sx * x, sz * z, corner, floor, side));
  }
  const fromAxis = length(x, z);
  const foot = fromAxis > 0 ? (Math.abs(z) * radius) / fromAxis : 0;
  if (foot >= side || foot <= uncut) ways.push(radius - fromAxis);
  return Math.min(...ways);
}

/** Signed distance in space from (x, y, z) to the metal: the definition, case by case. */
export function metalDistance(geometry: RodToCylinder): (x: number, y: number, z: number) => number {
  const { bore, cylinderAxisOffset, cylinderBottomHeight: bottom, notch } = geometry;
  const radius = bore / 2;
  const corner = (dx: number, dy: number) =>
    dx > 0 || dy > 0 ? length(Math.max(dx, 0), Math.max(dy, 0)) : Math.max(dx, dy);
  const lost = (1 - 1 / Math.sqrt(2)) * (notch?.cornerRadius ?? 0);
  if (notch === undefined || notch.depth <= lost || notch.height <= lost) {
    return (x, y, z) => corner(radius - length(x - cylinderAxisOffset, z), bottom - y);
  }
  const top = bottom + notch.height - lost;
  const face = Math.abs(geometry.planeOffset) + geometry.bigEndWidth / 2;
  const floor = Math.sqrt(radius ** 2 - face ** 2) + notch.depth - lost;
  const side = notch.width / 2;
  if (floor ** 2 + side ** 2 <= radius ** 2) {
    return (x, y, z) => corner(radius - length(x - cylinderAxisOffset, z), bottom - y);
  }
  return (x, y, z) => {
    const across = x - cylinderAxisOffset;
    const wall = radius - length(across, z);
    const above = corner(wall, top - y);
    const isOpen = Math.abs(z) < side && Math.abs(across) < floor;
    if (wall > 0 || isOpen) {
      // Outside the metal around the notch: the nearest wall in plan, then down to its lower edge.
      return Math.min(above, length(planDistance(across, z, radius, floor, side), Math.max(bottom - y, 0)));
    }
    const besides = Math.max(side - Math.abs(z), wall);
    const beyond = floor - Math.abs(across);
    const ways = [above];
    if (besides <= 0) ways.push(corner(besides, bottom - y));
    if (beyond <= 0) ways.push(corner(beyond, bottom - y));
    return Math.min(...ways);
  };
}
