/** Combinations for which there is room at first, and at most: then all are forgotten and it begins anew. */
const ROOM = 16;
const MOST = 2 ** 20;
/** Part of the room that is filled before there is more. */
const FULL = 0.6;

/** No number of a combination. */
const FREE = -1;

/** Bands by the number of a combination: an open hash table in plain columns of numbers. */
export class BandMemory {
  private keys = new Float64Array(ROOM).fill(FREE);
  private bands = new Float64Array(2 * ROOM);
  private lacks = new Uint8Array(ROOM);
  private count = 0;

  /**
   * Where a combination is kept.
   * @param key whole number from 0
   * @returns its place, or −1 where it is not; the place serves until something is kept
   */
  find(key: number): number {
    const mask = this.keys.length - 1;
    for (let at = spread(key) & mask; ; at = (at + 1) & mask) {
      const found = this.keys[at]!;
      if (found === key) return at;
      if (found === FREE) return -1;
    }
  }

  low(at: number): number {
    return this.bands[2 * at]!;
  }
  high(at: number): number {
    return this.bands[2 * at + 1]!;
  }
  lack(at: number): number {
    return this.lacks[at]!;
  }

  /** Keeps a band under a number that is not kept yet. */
  keep(key: number, low: number, high: number, lack: number): void {
    if (this.count >= FULL * this.keys.length) this.makeRoom();
    const mask = this.keys.length - 1;
    let at = spread(key) & mask;
    while (this.keys[at] !== FREE) at = (at + 1) & mask;
    this.keys[at] = key;
    this.bands[2 * at] = low;
    this.bands[2 * at + 1] = high;
    this.lacks[at] = lack;
    this.count += 1;
  }

  private makeRoom(): void {
    const { keys, bands, lacks } = this;
    const again = keys.length < MOST;
    const room = again ? 2 * keys.length : ROOM;
    this.keys = new Float64Array(room).fill(FREE);
    this.bands = new Float64Array(2 * room);
    this.lacks = new Uint8Array(room);
    this.count = 0;
    if (!again) return;
    for (let at = 0; at < keys.length; at += 1)
      if (keys[at] !== FREE) this.keep(keys[at]!, bands[2 * at]!, bands[2 * at + 1]!, lacks[at]!);
  }
}

/** Scatters whole numbers over 32 bits. */
function spread(key: number): number {
  const low = (key % 2 ** 32) | 0;
  const high = (key / 2 ** 32) | 0;
  let mixed = Math.imul(low ^ Math.imul(high, 0x85ebca6b), 0x9e3779b1);
  mixed ^= mixed >>> 15;
  return Math.imul(mixed, 0x85ebca6b) >>> 1;
}
