import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import type { CellList } from "./CellList.ts";
import type { DistanceToObstacle } from "./distanceAt.ts";
import type { FrameList } from "./FrameList.ts";
import { type MotionBounds, motionBoundsOf } from "./motionBoundsOf.ts";
import { NearestSoFar } from "./NearestSoFar.ts";
import { curveU, curveV, type OutlineCurve } from "./OutlineCurve.ts";
import type { Disc } from "./outlineDiscs.ts";
import {
  DISTANCE,
  PLACES,
  STEEP_X,
  STEEP_Y,
  type WriteDistance,
  writeDistance,
  X,
  Y,
} from "./SteepDistance.ts";

/** What a search for the nearest approach has found so far, and what it knows of the cells that it looks at. */
export class ApproachSearch {
  /** looked at so far */
  count = 0;
  readonly best = new NearestSoFar();
  readonly bounds: readonly MotionBounds[];
  readonly writes: readonly WriteDistance[];
  private readonly leasts: readonly number[];
  private readonly curves: readonly OutlineCurve[];
  private readonly frames: FrameList;
  private readonly hollow: 0 | ((within: number) => number);
  private readonly rodLength: number;
  private readonly n = new Float64Array(PLACES);

  constructor(
    crank: SliderCrank,
    obstacle: readonly DistanceToObstacle[],
    curves: readonly OutlineCurve[],
    frames: FrameList,
    hollow: 0 | ((within: number) => number),
  ) {
    this.curves = curves;
    this.frames = frames;
    this.hollow = hollow;
    this.rodLength = crank.rodLength;
    this.bounds = motionBoundsOf(crank, curves);
    this.writes = obstacle.map(writeDistance);
    this.leasts = obstacle.map(({ least }) => least ?? Number.NEGATIVE_INFINITY);
  }

  /** Whether no point of a disc that goes with the rod can be nearer to a part, while it moves so far at most [m]. */
  isDiscBeyond({ u, v, radius }: Disc, frame: number, part: number, way: number): boolean {
    const { n, frames } = this;
    const sin = frames.sin[frame]!;
    const cos = frames.cos[frame]!;
    n[X] = frames.x[frame]! + v * cos - u * sin;
    n[Y] = frames.y[frame]! + u * cos + v * sin;
    this.writes[part]!(n);
    return this.best.isBeyond(n[DISTANCE]! - radius - way);
  }

  /**
   * Looks at the middle of a cell and at its nearer end, and writes the bound of the cell and what it is to be halved
   * across next.
   * @returns whether a nearer approach can lie in it
   */
  consider(cells: CellList, at: number): boolean {
    this.count += 1;
    const { n, frames } = this;
    const curve = cells.curve[at]!;
    const part = cells.part[at]!;
    const frame = cells.frame[at]!;
    const angle = cells.angle[at]!;
    const halfAngle = cells.halfAngle[at]!;
    const t = cells.t[at]!;
    const halfT = cells.halfT[at]!;
    const element = this.curves[curve]!;
    const write = this.writes[part]!;
    const { perRadian, bendOfTurn, bendOfBoth, bendOfCurve } = this.bounds[curve]!;
    const x = frames.x[frame]!;
    const y = frames.y[frame]!;
    const sin = frames.sin[frame]!;
    const cos = frames.cos[frame]!;
    const isMiddle = halfT === 0.5;
    const u = isMiddle ? element.middleU : curveU(element, t);
    const v = isMiddle ? element.middleV : curveV(element, t);
    const outX = v * cos - u * sin;
    const outY = u * cos + v * sin;
    n[X] = x + outX;
    n[Y] = y + outY;
    write(n);
    const value = n[DISTANCE]!;
    this.best.meet(curve, angle, t, value);
    const way = perRadian * halfAngle + element.length * halfT;
    let bound = Math.max(value - way, this.leasts[part]!);
    if (this.best.isBeyond(bound)) return false;
    // The rod turns by so much for each radian of the crank, clockwise: along the outline x grows by outY, y falls by outX.
    const swing = y / (this.rodLength * cos);
    const byTurning = Math.abs(n[STEEP_X]! * (y - swing * outY) + n[STEEP_Y]! * (swing * outX - x));
    // Along the curve, in the frame of the rod first.
    const bend = element.radius === 0 ? 0 : element.sweep;
    let du = bend === 0 ? element.du : -(v - element.v) * bend;
    let dv = bend === 0 ? element.dv : (u - element.u) * bend;
    const along = n[STEEP_X]! * (dv * cos - du * sin) + n[STEEP_Y]! * (du * cos + dv * sin);
    const ofBend = 0.5 * bendOfTurn * halfAngle * halfAngle;
    const ofTurn = byTurning * halfAngle + ofBend;
    const ofCurve = Math.abs(along) * halfT + 0.5 * bendOfCurve * halfT * halfT;
    const bends = this.hollow === 0 ? 0 : this.hollow(value + way);
    bound = Math.max(
      bound,
      value - ofTurn - ofCurve - bendOfBoth * halfAngle * halfT - 0.5 * bends * way * way,
    );
    if (this.best.isBeyond(bound)) return false;
    // The nearest point of a straight stretch is mostly its end.
    const inwards = along > 0 ? 1 : -1;
    const end = t - inwards * halfT;
    const endU = curveU(element, end);
    const endV = curveV(element, end);
    const endX = endV * cos - endU * sin;
    const endY = endU * cos + endV * sin;
    n[X] = x + endX;
    n[Y] = y + endY;
    write(n);
    const atEnd = n[DISTANCE]!;
    this.best.meet(curve, angle, end, atEnd);
    if (bend !== 0) {
      du = -(endV - element.v) * bend;
      dv = (endU - element.u) * bend;
    }
    const turned = perRadian * halfAngle;
    const length = 2 * halfT * element.length;
    // Where the distance rises from the end into the stretch, the stretch itself takes nothing off.
    const rise =
      2 * halfT * inwards * (n[STEEP_X]! * (dv * cos - du * sin) + n[STEEP_Y]! * (du * cos + dv * sin)) -
      2 * halfT * (bendOfBoth * halfAngle + bendOfCurve * halfT) -
      bends * length * (turned + 0.5 * length);
    const ofEnd =
      Math.abs(n[STEEP_X]! * (y - swing * endY) + n[STEEP_Y]! * (swing * endX - x)) * halfAngle +
      ofBend +
      0.5 * bends * turned * turned;
    const fromEnd = atEnd - ofEnd + Math.min(0, rise);
    cells.turns[at] = (fromEnd > bound ? ofEnd >= -rise : ofTurn >= ofCurve) ? 1 : 0;
    cells.bound[at] = Math.max(bound, fromEnd);
    return !this.best.isBeyond(cells.bound[at]!);
  }
}
