import type { Fact } from "../judge/Fact.ts";
import { type FactSlots, MISSING_WORD } from "./FactSlots.ts";

/** In `lack`: the fact is missing. */
export const MISSING = 4;

/**
 * The facts of some builds as columns of numbers: that of a slot begins at `slot × room`, one entry a build. A band has
 * its ends in `low` and `high` [SI]; a word has its number in both; a missing fact has −∞ and +∞, so that every
 * comparison with it may hold and none surely does, and {@link MISSING} in `lack`.
 */
export class FactColumns {
  readonly slots: FactSlots;
  /** Builds for which there is room. */
  readonly room: number;
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly lack: Uint8Array;

  /** @param room whole number from 1 */
  constructor(slots: FactSlots, room = 1) {
    const size = slots.size * room;
    this.slots = slots;
    this.room = room;
    this.low = new Float64Array(size);
    this.high = new Float64Array(size);
    this.lack = new Uint8Array(size);
    for (let slot = 0; slot < slots.size; slot += 1)
      for (let build = 0; build < room; build += 1) this.clear(slot, build);
  }

  /** Puts a fact in its slot. @throws RangeError when an end of a band is not finite */
  set(slot: number, fact: Fact, build = 0): void {
    if (fact.kind === "band") this.setBand(slot, fact.low, fact.high, build);
    else if (fact.kind === "missing") this.clear(slot, build);
    else {
      const word = this.slots.wordNumber(fact.word);
      this.put(slot * this.room + build, word, word, 0);
    }
  }

  /** @throws RangeError when an end is not finite: that would read as missing */
  setBand(slot: number, low: number, high: number, build = 0): void {
    if (!Number.isFinite(low) || !Number.isFinite(high))
      throw new RangeError(
        `${this.slots.names[slot]}: found a band from ${low} to ${high}; expected finite ends`,
      );
    this.put(slot * this.room + build, low, high, 0);
  }

  /** Makes a fact missing. */
  clear(slot: number, build = 0): void {
    const at = slot * this.room + build;
    if (this.slots.isWord[slot]) this.put(at, MISSING_WORD, MISSING_WORD, MISSING);
    else this.put(at, -Infinity, Infinity, MISSING);
  }

  /** Puts every fact of one build in its slot. */
  fill(lookup: (name: string) => Fact, build = 0): void {
    for (const [slot, name] of this.slots.names.entries()) this.set(slot, lookup(name), build);
  }

  private put(at: number, low: number, high: number, lack: number): void {
    this.low[at] = low;
    this.high[at] = high;
    this.lack[at] = lack;
  }
}
