import { mm } from "../check/support.test-support.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { buildOutline } from "../outline/buildOutline.ts";

type Points = readonly (readonly [u: number, v: number])[];

/** Half outlines of two invented rods [mm]. */
export const hillPoints: Points = [
  [-33, 0],
  [-33, 14],
  [-28.5, 23.5],
  [-24, 26],
  [-24, 37.5],
  [-8, 38.5],
  [9, 38.5],
  [17, 33.5],
  [30, 15.5],
  [60, 10.5],
];
export const eightPoints: Points = [
  [-37, 0],
  [-37, 16],
  [-31, 27],
  [-25, 29],
  [-25, 40],
  [-8, 41],
  [8, 41],
  [17, 36],
  [32, 17],
  [62, 11],
];

export const outlineOf = (points: Points) => buildOutline(points.map(([u, v]) => ({ u: u * mm, v: v * mm })));

/** The whole outline as a closed list of corners [m], worked out from the listed half alone. */
function corners(points: Points): Points {
  const near = points.map(([u, v]) => [u * mm, v * mm] as const);
  const far = near.map(([u, v]) => [u, -v] as const).reverse();
  return [...near, ...far, near[0]!];
}

/** Distance of a point (x, y) [m] of the cylinder's frame at a crank angle [rad]. */
type Distance = (x: number, y: number, angle: number) => number;

/**
 * Least distance by plain sampling: half a degree by half a millimetre, then three finer looks round the best.
 * The mechanism is written out anew.
 */
export function sampledLeast(points: Points, crank: SliderCrank, distance: Distance, turns = 1): number {
  const { throwRadius: r, rodLength: l, pinLineOffset: e } = crank;
  const ring = corners(points);
  const edges = ring.slice(1).map((to, i) => ({ from: ring[i]!, to }));
  const at = (edge: number, share: number, angle: number): number => {
    const { from, to } = edges[edge]!;
    const [u, v] = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
    const phi = Math.asin((r * Math.sin(angle) - e) / l);
    const x = r * Math.sin(angle) - u * Math.sin(phi) + v * Math.cos(phi);
    const y = r * Math.cos(angle) + u * Math.cos(phi) + v * Math.sin(phi);
    return distance(x, y, angle);
  };
  const step = Math.PI / 360;
  let best = { value: Number.POSITIVE_INFINITY, edge: 0, share: 0, angle: 0, width: 0 };
  for (const [edge, { from, to }] of edges.entries()) {
    const count = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / (0.5 * mm)));
    for (let i = 0; i < 720 * turns; i++) {
      for (let j = 0; j <= count; j++) {
        const value = at(edge, j / count, i * step);
        if (value < best.value) best = { value, edge, share: j / count, angle: i * step, width: 1 / count };
      }
    }
  }
  for (let size = 1; size > 1e-3; size /= 10) {
    const { edge, share, angle, width } = best;
    for (let i = -20; i <= 20; i++) {
      for (let j = -20; j <= 20; j++) {
        const s = Math.min(1, Math.max(0, share + (j / 20) * size * width));
        const a = angle + (i / 20) * size * step;
        const value = at(edge, s, a);
        if (value < best.value) best = { value, edge, share: s, angle: a, width };
      }
    }
  }
  return best.value;
}

export const eightCrank: SliderCrank = { throwRadius: 46 * mm, rodLength: 155 * mm, pinLineOffset: 0 };
