interface Entry {
  readonly point: Float64Array;
  readonly value: number;
  readonly next: Entry | undefined;
}

/** The bits of one number at a time. */
const number = new Float64Array(1);
const bits = new Uint32Array(number.buffer);

function hashOf(point: Float64Array): number {
  let hash = 0;
  for (let index = 0; index < point.length; index += 1) {
    number[0] = point[index]!;
    hash = Math.imul(hash ^ bits[0]!, 0x9e3779b1);
    hash = Math.imul(hash ^ (hash >>> 15) ^ bits[1]!, 0x85ebca6b);
  }
  return hash ^ (hash >>> 13);
}

function same(a: Float64Array, b: Float64Array): boolean {
  for (let index = 0; index < a.length; index += 1) if (a[index] !== b[index]) return false;
  return true;
}

/** Values of one function at points that were asked for before: all points as long as the first. */
export class PointMemory {
  private readonly entries = new Map<number, Entry>();

  /** The value at a point, worked out if it is new. The point may be used again by the caller. */
  at(point: Float64Array, compute: () => number): number {
    const hash = hashOf(point);
    const first = this.entries.get(hash);
    for (let entry = first; entry !== undefined; entry = entry.next)
      if (same(entry.point, point)) return entry.value;
    const kept = point.slice();
    const value = compute();
    this.entries.set(hash, { point: kept, value, next: this.entries.get(hash) });
    return value;
  }
}
