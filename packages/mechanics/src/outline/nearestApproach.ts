import { CellList } from "./CellList.ts";
import { FrameList } from "./FrameList.ts";
import { type MotionBounds, motionBounds } from "./motionBounds.ts";
import { curveU, curveV, type OutlineCurve } from "./OutlineCurve.ts";
import { orderBy } from "./orderBy.ts";
import type { RodSweep } from "./sweepOutline.ts";

/** Where on the outline and in the turn the rod comes nearest. */
export interface Approach {
  /** index of the curve */
  readonly curve: number;
  /** crank angle [rad] */
  readonly angle: number;
  /** share of the curve [-] */
  readonly t: number;
  /** [m] */
  readonly clearance: number;
}

/** Cells a turn is first divided in: 7.5 degrees each, a few millimetres of motion. */
const FIRST_CELLS = 48;
/** A cell that could hold no more than so much less than what was found is dropped [m]. */
const RESOLUTION = 1e-10;
/** Of two places as near to less than this the one found first counts [m], so that rounding does not choose. */
const ALIKE = 1e-12;
/** Way over which the slope of a distance is taken [m]: far below any part, far above rounding. */
const STEP = 1e-9;
/** Cells after which the search gives up: then the outline lies along the obstacle, and no cell is better than others. */
const MOST_CELLS = 20_000;

const ROOM = 4096;
const frames = new FrameList(ROOM);
const levels = [new CellList(ROOM), new CellList(ROOM)] as const;

/** A bound as far as it matters for an order: a rod in the middle of its cylinder passes both sides alike. */
const coarsely = (bound: number): number => Math.round(bound / RESOLUTION);

/** A disc about a point of the rod's middle line that holds the whole outline. */
function discAround(curves: readonly OutlineCurve[]): { readonly u: number; readonly radius: number } {
  const ends = curves.flatMap((curve) => [0, 1].map((t) => ({ u: curveU(curve, t), v: curveV(curve, t) })));
  const along = ends.map(({ u }) => u);
  const u = (Math.min(...along) + Math.max(...along)) / 2;
  const radius = curves.map((curve) =>
    curve.radius === 0
      ? Math.max(Math.hypot(curve.u - u, curve.v), Math.hypot(curve.u + curve.du - u, curve.v + curve.dv))
      : Math.hypot(curve.u - u, curve.v) + curve.radius,
  );
  return { u, radius: Math.max(...radius) };
}

/**
 * Least distance from the swinging rod to an obstacle that stands still and of which it is known how hollow it is, over
 * the whole turn and every point of the outline. Cells of crank angle by curve are halved; one is dropped when no point
 * of it can be nearer than what was found, by the better of two bounds about its middle: a distance changes by no more
 * than the point moves, and it falls below the straight line of its slope by no more than the motion and the obstacle
 * bend. The second makes cells beside the nearest approach drop out soon, so that what is left is that approach itself.
 * @param sweep the mechanism, the outline, the parts of the obstacle and how hollow they are
 * @param curves the curves of the outline
 * @param hollow most that the distance to a part bends down [1/m], as `RodSweep` says it
 * @returns the nearest approach, no more than some nanometres above the least distance; undefined where too many points
 *   are about as near
 *
 * Source: branch and bound with bounds of first and second order, numerical practice.
 */
export function nearestApproach(
  { crank, obstacle }: RodSweep,
  curves: readonly OutlineCurve[],
  hollow: 0 | ((within: number) => number),
): Approach | undefined {
  const { rodLength } = crank;
  const bounds = curves.map((curve) => motionBounds(crank, curve));
  let best = { curve: 0, angle: 0, t: 0, clearance: Number.POSITIVE_INFINITY };
  const leasts = obstacle.map(({ least }) => least ?? Number.NEGATIVE_INFINITY);
  let count = 0;
  let [next, cells]: [CellList, CellList] = [levels[0], levels[1]];
  frames.clear();
  next.length = 0;

  const add = (
    frame: number,
    curve: number,
    part: number,
    angle: number,
    halfAngle: number,
    t: number,
    halfT: number,
  ): void => {
    count += 1;
    const element = curves[curve]!;
    const distance = obstacle[part]!;
    const { perRadian, bendOfTurn, bendOfBoth, bendOfCurve }: MotionBounds = bounds[curve]!;
    const [x, y, sin, cos] = [frames.x[frame]!, frames.y[frame]!, frames.sin[frame]!, frames.cos[frame]!];
    const [u, v] = [curveU(element, t), curveV(element, t)];
    const [outX, outY] = [v * cos - u * sin, u * cos + v * sin];
    const value = distance(x + outX, y + outY, angle);
    if (value < best.clearance - ALIKE) best = { curve, angle, t, clearance: value };
    const way = perRadian * halfAngle + element.length * halfT;
    let bound = Math.max(value - way, leasts[part]!);
    if (bound >= best.clearance - RESOLUTION) return;
    const slopeX = (distance(x + outX + STEP, y + outY, angle) - value) / STEP;
    const slopeY = (distance(x + outX, y + outY + STEP, angle) - value) / STEP;
    // The rod turns by so much for each radian of the crank, clockwise: along the outline x grows by outY, y falls by outX.
    const swing = y / (rodLength * cos);
    const byTurning = Math.abs(slopeX * (y - swing * outY) + slopeY * (swing * outX - x));
    // Along the curve, in the frame of the rod first.
    const bend = element.radius === 0 ? 0 : element.sweep;
    const du = bend === 0 ? element.du : -(v - element.v) * bend;
    const dv = bend === 0 ? element.dv : (u - element.u) * bend;
    const along = slopeX * (dv * cos - du * sin) + slopeY * (du * cos + dv * sin);
    const ofTurn = byTurning * halfAngle + 0.5 * bendOfTurn * halfAngle * halfAngle;
    const ofCurve = Math.abs(along) * halfT + 0.5 * bendOfCurve * halfT * halfT;
    const fall =
      ofTurn +
      ofCurve +
      bendOfBoth * halfAngle * halfT +
      0.5 * (hollow === 0 ? 0 : hollow(value)) * way * way;
    bound = Math.max(bound, value - fall);
    if (bound >= best.clearance - RESOLUTION) return;
    // The nearest point of a straight stretch is mostly its end.
    const end = along > 0 ? t - halfT : t + halfT;
    const [endU, endV] = [curveU(element, end), curveV(element, end)];
    const atEnd = distance(x + endV * cos - endU * sin, y + endU * cos + endV * sin, angle);
    if (atEnd < best.clearance - ALIKE) best = { curve, angle, t: end, clearance: atEnd };
    next.push(curve, part, frame, angle, halfAngle, t, halfT, bound, ofTurn >= ofCurve ? 1 : 0);
  };

  // Whole outlines first, as a disc: at most angles it is far from everything.
  const disc = discAround(curves);
  const motion = Math.max(...bounds.map(({ perRadian }) => perRadian));
  const halfAngle = Math.PI / FIRST_CELLS;
  const whole = new Float64Array(FIRST_CELLS * obstacle.length);
  for (let i = 0; i < FIRST_CELLS; i++) {
    const angle = (2 * i + 1) * halfAngle;
    const frame = frames.add(crank, angle);
    const x = frames.x[frame]! - disc.u * frames.sin[frame]!;
    const y = frames.y[frame]! + disc.u * frames.cos[frame]!;
    for (const [part, distance] of obstacle.entries())
      whole[i * obstacle.length + part] = distance(x, y, angle) - disc.radius - motion * halfAngle;
  }
  for (const at of orderBy(whole.map(coarsely), whole.length)) {
    if (whole[at]! >= best.clearance - RESOLUTION) continue;
    const part = at % obstacle.length;
    const frame = (at - part) / obstacle.length;
    for (let curve = 0; curve < curves.length; curve++)
      add(frame, curve, part, (2 * frame + 1) * halfAngle, halfAngle, 0.5, 0.5);
  }
  while (next.length > 0) {
    if (count > MOST_CELLS) return undefined;
    [next, cells] = [cells, next];
    next.length = 0;
    // The most promising cells first, as their children lower the distance all others must beat.
    for (const i of orderBy(cells.bound.subarray(0, cells.length).map(coarsely), cells.length)) {
      if (cells.bound[i]! >= best.clearance - RESOLUTION) continue;
      const [curve, part, frame] = [cells.curve[i]!, cells.part[i]!, cells.frame[i]!];
      const [angle, turning, t, halfT] = [cells.angle[i]!, cells.halfAngle[i]!, cells.t[i]!, cells.halfT[i]!];
      if (cells.turns[i] === 1) {
        const half = turning / 2;
        add(frames.add(crank, angle - half), curve, part, angle - half, half, t, halfT);
        add(frames.add(crank, angle + half), curve, part, angle + half, half, t, halfT);
      } else {
        const half = halfT / 2;
        add(frame, curve, part, angle, turning, t - half, half);
        add(frame, curve, part, angle, turning, t + half, half);
      }
    }
  }
  return best;
}
