import { ApproachSearch } from "./ApproachSearch.ts";
import { CellList } from "./CellList.ts";
import { FrameList } from "./FrameList.ts";
import { type Approach, RESOLUTION } from "./NearestSoFar.ts";
import type { OutlineCurve } from "./OutlineCurve.ts";
import { orderBy } from "./orderBy.ts";
import { type Disc, outlineDiscs } from "./outlineDiscs.ts";
import { DISTANCE, PLACES, X, Y } from "./SteepDistance.ts";
import type { RodSweep } from "./sweepOutline.ts";

/** Cells a turn is first divided in: 7.5 degrees each, a few millimetres of motion. */
const FIRST_CELLS = 48;
/** Cells after which the search gives up: then the outline lies along the obstacle, and no cell is better than others. */
const MOST_CELLS = 20_000;

const ROOM = 4096;
const frames = new FrameList(ROOM);
const levels = [new CellList(ROOM), new CellList(ROOM)] as const;

let coarse = new Float64Array(ROOM);

/** The order of bounds as far as it matters: a rod in the middle of its cylinder passes both sides alike. */
function orderCoarsely(bounds: Float64Array, count: number): Uint32Array {
  if (count > coarse.length) coarse = new Float64Array(2 * count);
  for (let i = 0; i < count; i++) coarse[i] = Math.round(bounds[i]! / RESOLUTION);
  return orderBy(coarse, count);
}

/** The last bounds, used again for an obstacle of as many parts. */
let whole = new Float64Array();

/** How near the whole outline, as a disc, can come to each part while the crank turns through each of the first cells. */
function boundsOfWhole({ writes }: ApproachSearch, { u, radius }: Disc, way: number): Float64Array {
  const count = FIRST_CELLS * writes.length;
  if (whole.length !== count) whole = new Float64Array(count);
  const n = new Float64Array(PLACES);
  for (let i = 0; i < FIRST_CELLS; i++) {
    n[X] = frames.x[i]! - u * frames.sin[i]!;
    n[Y] = frames.y[i]! + u * frames.cos[i]!;
    for (let part = 0; part < writes.length; part++) {
      writes[part]!(n);
      whole[i * writes.length + part] = n[DISTANCE]! - radius - way;
    }
  }
  return whole;
}

/**
 * Least distance from the swinging rod to an obstacle that stands still and of which it is known how hollow it is, over
 * the whole turn and every point of the outline. Cells of crank angle by curve are halved; one is dropped when no point
 * of it can be nearer than what was found, by the best of three bounds: a distance changes by no more
 * than the point moves, and it falls below the straight line of its slope by no more than the motion and the obstacle
 * bend, about the middle of the cell and about the end of its stretch that is nearer. The others make cells beside the
 * nearest approach drop out soon, so that what is left is that approach itself.
 * @param sweep the mechanism, the outline, the parts of the obstacle and how hollow they are
 * @param curves the curves of the outline
 * @param hollow most that the distance to a part bends down [1/m], as `RodSweep` says it
 * @param below only what is nearer than this is sought [m]; where nothing is, it is what comes back as the clearance
 * @returns the nearest approach, no more than some nanometres above the least distance; undefined where too many points
 *   are about as near
 *
 * Source: branch and bound with bounds of first and second order, numerical practice.
 */
export function nearestApproach(
  { crank, obstacle }: RodSweep,
  curves: readonly OutlineCurve[],
  hollow: 0 | ((within: number) => number),
  below = Number.POSITIVE_INFINITY,
): Approach | undefined {
  const search = new ApproachSearch(crank, obstacle, curves, frames, hollow);
  search.best.clearance = below;
  let [next, cells]: [CellList, CellList] = [levels[0], levels[1]];
  frames.clear();
  next.length = 0;
  /** Keeps the cell that was put last in the list only where something can be found in it. */
  const keepOrDrop = (): void => {
    if (!search.consider(next, next.length - 1)) next.length -= 1;
  };
  const halfAngle = Math.PI / FIRST_CELLS;
  for (let i = 0; i < FIRST_CELLS; i++) frames.add(crank, (2 * i + 1) * halfAngle);
  // Whole outlines first, as a disc, and stretches of them as smaller ones: at most angles they are far from everything.
  const discs = outlineDiscs(curves);
  const way = halfAngle * Math.max(...search.bounds.map(({ perRadian }) => perRadian));
  const bounds = boundsOfWhole(search, discs.whole, way);
  const parts = obstacle.length;
  const order = orderCoarsely(bounds, bounds.length);
  for (let place = 0; place < bounds.length; place++) {
    if (search.best.isBeyond(bounds[order[place]!]!)) continue;
    const part = order[place]! % parts;
    const frame = (order[place]! - part) / parts;
    for (const disc of discs.stretches) {
      if (search.isDiscBeyond(disc, frame, part, way)) continue;
      for (let curve = disc.from; curve < disc.to; curve++) {
        next.push(curve, part, frame, (2 * frame + 1) * halfAngle, halfAngle, 0.5, 0.5, 0);
        keepOrDrop();
      }
    }
  }
  while (next.length > 0) {
    if (search.count > MOST_CELLS) return undefined;
    [next, cells] = [cells, next];
    next.length = 0;
    // The most promising cells first, as their children lower the distance all others must beat.
    const order = orderCoarsely(cells.bound, cells.length);
    for (let place = 0; place < cells.length; place++) {
      const i = order[place]!;
      if (search.best.isBeyond(cells.bound[i]!)) continue;
      const turns = cells.turns[i] === 1;
      for (let side = -1; side <= 1; side += 2) {
        next.pushHalf(cells, i, turns, side);
        const last = next.length - 1;
        if (turns) next.frame[last] = frames.add(crank, next.angle[last]!);
        keepOrDrop();
      }
    }
  }
  return search.best;
}
