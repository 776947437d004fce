import { largestRodAngle } from "../kinematics/rodAngle.ts";
import { distanceAt } from "./distanceAt.ts";
import type { OutlineCurve } from "./OutlineCurve.ts";
import { type RodFrame, rodFrame } from "./rodFrame.ts";
import type { RodSweep } from "./sweepOutline.ts";

/** A stretch of crank angle by a stretch of one outline element, against one part of the obstacle. */
export interface SweepCell {
  readonly curve: number;
  readonly part: number;
  /** place of the rod at the middle of the cell, kept because cells halved along the element share it */
  readonly frame: RodFrame;
  readonly angle: number;
  readonly halfAngle: number;
  readonly t: number;
  readonly halfT: number;
  /** no point of the cell is nearer than this [m] */
  readonly bound: number;
}

/** Cells a turn is first divided in: 7.5 degrees each, a few millimetres of motion. */
const firstCells = 48;
/** Cells are halved until no point of one moves farther than this share of throw plus outline. */
const finest = 1.5e-3;

/**
 * Farthest a point of the element moves per radian of crank angle [m]: r for the big-end centre, and its
 * distance from it times the rod's turning, d(phi)/d(theta) = r cos(theta) / (l cos(phi)) <= r / (l cos(phi_max)).
 * What the obstacle moves by itself comes on top.
 */
function motionPerRadian({ crank, motion }: RodSweep, curve: OutlineCurve): number {
  const turning = crank.throwRadius / (crank.rodLength * Math.cos(largestRodAngle(crank)));
  return crank.throwRadius + curve.reach * turning + (motion?.perRadian ?? 0);
}

/**
 * The cells that can hold the least distance. A distance changes by no more than the point moves, so the
 * value in the middle of a cell less the farthest way from there to its rim is below every value inside;
 * a cell whose bound exceeds a distance already found is dropped, the others are halved across their
 * longer side, down to the finest size.
 * @param sweep the mechanism, the outline and the parts of the obstacle
 * @param curves the curves of the outline
 * @returns the cells left, and the least distance found in the middle of one
 *
 * Source: branch and bound with a Lipschitz constant.
 */
export function sweepCells(
  sweep: RodSweep,
  curves: readonly OutlineCurve[],
): { readonly cells: readonly SweepCell[]; readonly least: number } {
  const { crank, obstacle } = sweep;
  const motions = curves.map((curve) => motionPerRadian(sweep, curve));
  const size = finest * (crank.throwRadius + Math.max(...curves.map(({ reach }) => reach)));
  let least = Number.POSITIVE_INFINITY;
  let next: SweepCell[] = [];
  const add = (
    frame: RodFrame,
    curve: number,
    part: number,
    angle: number,
    halfAngle: number,
    t: number,
    halfT: number,
  ): void => {
    const element = curves[curve]!;
    const value = distanceAt(frame, element, t, obstacle[part]!);
    const bound = value - motions[curve]! * halfAngle - element.length * halfT;
    if (value < least) least = value;
    if (bound < least) next.push({ curve, part, frame, angle, halfAngle, t, halfT, bound });
  };

  const halfAngle = Math.PI / firstCells;
  const count = firstCells * (sweep.motion?.turns ?? 1);
  for (let i = 0; i < count; i++) {
    const angle = (2 * i + 1) * halfAngle;
    const frame = rodFrame(crank, angle);
    for (let curve = 0; curve < curves.length; curve++) {
      for (let part = 0; part < obstacle.length; part++) add(frame, curve, part, angle, halfAngle, 0.5, 0.5);
    }
  }

  // The most promising cells first, as their children lower the distance all others must beat.
  next.sort((a, b) => a.bound - b.bound);
  const done: SweepCell[] = [];
  while (next.length > 0) {
    const cells = next;
    next = [];
    for (const cell of cells) {
      const { curve, part, angle, t, bound } = cell;
      if (bound >= least) continue;
      const turned = motions[curve]! * cell.halfAngle;
      const along = curves[curve]!.length * cell.halfT;
      if (turned + along <= size) {
        done.push(cell);
      } else if (turned >= along) {
        const half = cell.halfAngle / 2;
        add(rodFrame(crank, angle - half), curve, part, angle - half, half, t, cell.halfT);
        add(rodFrame(crank, angle + half), curve, part, angle + half, half, t, cell.halfT);
      } else {
        const half = cell.halfT / 2;
        add(cell.frame, curve, part, angle, cell.halfAngle, t - half, half);
        add(cell.frame, curve, part, angle, cell.halfAngle, t + half, half);
      }
    }
  }
  return { cells: done.filter((cell) => cell.bound < least), least };
}
