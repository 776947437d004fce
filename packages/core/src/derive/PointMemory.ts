import { hashOf } from "./hashOf.ts";

/** Points for which there is room at first. */
const ROOM = 64;

/** Values of one function at points that were asked for before; all its points have as many numbers. */
export class PointMemory {
  private readonly size: number;
  private count = 0;
  /** All points one after the other: an array for each would be most of the cost. */
  private points: Float64Array;
  private values = new Float64Array(ROOM);
  /** By point, the one before it of the same hash, or −1. */
  private before = new Int32Array(ROOM);
  private readonly last = new Map<number, number>();

  /** @param size numbers of a point */
  constructor(size: number) {
    this.size = size;
    this.points = new Float64Array(ROOM * size);
  }

  /** The value at a point, worked out if it is new. The point may be used again by the caller, also while it is. */
  at(point: Float64Array, compute: () => number): number {
    const hash = hashOf(point);
    for (let at = this.last.get(hash) ?? -1; at >= 0; at = this.before[at]!)
      if (!Number.isNaN(this.values[at]) && this.isAt(at, point)) return this.values[at]!;
    const at = this.add(point, hash);
    const value = compute();
    this.values[at] = value;
    return value;
  }

  private isAt(at: number, point: Float64Array): boolean {
    const start = at * this.size;
    for (let index = 0; index < this.size; index += 1)
      if (this.points[start + index] !== point[index]) return false;
    return true;
  }

  private add(point: Float64Array, hash: number): number {
    if (this.count === this.values.length) this.grow();
    const at = this.count++;
    this.points.set(point, at * this.size);
    // Until it is worked out: what is refused is refused anew each time.
    this.values[at] = Number.NaN;
    this.before[at] = this.last.get(hash) ?? -1;
    this.last.set(hash, at);
    return at;
  }

  private grow(): void {
    const [points, values, before] = [this.points, this.values, this.before];
    this.points = new Float64Array(2 * points.length);
    this.points.set(points);
    this.values = new Float64Array(2 * values.length);
    this.values.set(values);
    this.before = new Int32Array(2 * before.length);
    this.before.set(before);
  }
}
