import { CellList } from "./CellList.ts";
import { FrameList } from "./FrameList.ts";
import { motionBoundsOf } from "./motionBoundsOf.ts";
import { curveU, curveV, type OutlineCurve } from "./OutlineCurve.ts";
import { orderBy } from "./orderBy.ts";
import type { RodSweep } from "./sweepOutline.ts";

/** Cells a turn is first divided in: 7.5 degrees each, a few millimetres of motion. */
const firstCells = 48;
/** Cells are halved until no point of one moves farther than this share of throw plus outline. */
const finest = 1.5e-3;

/** Farthest a point of each element moves per radian of crank angle [m]; what the obstacle moves by itself on top. */
const motionsPerRadian = ({ crank, motion }: RodSweep, curves: readonly OutlineCurve[]): readonly number[] =>
  motionBoundsOf(crank, curves).map(({ perRadian }) => perRadian + (motion?.perRadian ?? 0));

/** Room for cells and frames of most sweeps; one sweep is done before the next begins, so they are used again. */
const ROOM = 4096;
const frames = new FrameList(ROOM);
const levels = [new CellList(ROOM), new CellList(ROOM)] as const;
const done = new CellList(ROOM);

/**
 * The cells that can hold the least distance. A distance changes by no more than the point moves, so the
 * value in the middle of a cell less the farthest way from there to its rim is below every value inside;
 * a cell whose bound exceeds a distance already found is dropped, the others are halved across their
 * longer side, down to the finest size.
 * @param sweep the mechanism, the outline and the parts of the obstacle
 * @param curves the curves of the outline
 * @returns the cells left, until the next call, and the least distance found in the middle of one
 *
 * Source: branch and bound with a Lipschitz constant.
 */
export function sweepCells(
  sweep: RodSweep,
  curves: readonly OutlineCurve[],
): { readonly cells: CellList; readonly least: number } {
  const { crank, obstacle } = sweep;
  const motions = motionsPerRadian(sweep, curves);
  const size = finest * (crank.throwRadius + Math.max(...curves.map(({ reach }) => reach)));
  let least = Number.POSITIVE_INFINITY;
  let [next, cells]: [CellList, CellList] = [levels[0], levels[1]];
  frames.clear();
  next.length = 0;
  done.length = 0;
  const add = (
    frame: number,
    curve: number,
    part: number,
    angle: number,
    halfAngle: number,
    t: number,
    halfT: number,
  ): void => {
    const element = curves[curve]!;
    const [sin, cos] = [frames.sin[frame]!, frames.cos[frame]!];
    const u = curveU(element, t);
    const v = curveV(element, t);
    const x = frames.x[frame]! - u * sin + v * cos;
    const value = obstacle[part]!(x, frames.y[frame]! + u * cos + v * sin, angle);
    const bound = value - motions[curve]! * halfAngle - element.length * halfT;
    if (value < least) least = value;
    if (bound < least) next.push(curve, part, frame, angle, halfAngle, t, halfT, bound);
  };

  const halfAngle = Math.PI / firstCells;
  const count = firstCells * (sweep.motion?.turns ?? 1);
  for (let i = 0; i < count; i++) {
    const angle = (2 * i + 1) * halfAngle;
    const frame = frames.add(crank, angle);
    for (let curve = 0; curve < curves.length; curve++) {
      for (let part = 0; part < obstacle.length; part++) add(frame, curve, part, angle, halfAngle, 0.5, 0.5);
    }
  }

  // The most promising cells first, as their children lower the distance all others must beat.
  let order: Uint32Array | undefined = orderBy(next.bound, next.length);
  while (next.length > 0) {
    [next, cells] = [cells, next];
    next.length = 0;
    for (let place = 0; place < cells.length; place++) {
      const i: number = order === undefined ? place : order[place]!;
      const bound = cells.bound[i]!;
      if (bound >= least) continue;
      const [curve, part, frame] = [cells.curve[i]!, cells.part[i]!, cells.frame[i]!];
      const [angle, turning, t, halfT] = [cells.angle[i]!, cells.halfAngle[i]!, cells.t[i]!, cells.halfT[i]!];
      const turned = motions[curve]! * turning;
      const along = curves[curve]!.length * halfT;
      if (turned + along <= size) {
        done.push(curve, part, frame, angle, turning, t, halfT, bound);
      } else if (turned >= along) {
        const half = turning / 2;
        add(frames.add(crank, angle - half), curve, part, angle - half, half, t, halfT);
        add(frames.add(crank, angle + half), curve, part, angle + half, half, t, halfT);
      } else {
        const half = halfT / 2;
        add(frame, curve, part, angle, turning, t - half, half);
        add(frame, curve, part, angle, turning, t + half, half);
      }
    }
    order = undefined;
  }
  return { cells: done, least };
}
