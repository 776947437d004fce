import type { RulePlan } from "../planQuantities.ts";
import { TupleKeys } from "./TupleKeys.ts";

/** Combinations up to which verdicts and margins are remembered: beyond, facts are, and judging them is cheap. */
const MOST = 2 ** 16;
const MOST_MARGINS = 2 ** 12;

/** No verdict, and no margin, is this. */
export const NOT_JUDGED = 255;

/** What one rule said of combinations before. */
export class RuleMemory {
  readonly keys: TupleKeys;
  /** By how many kinds are chosen: how many of its own these are. */
  readonly depths: readonly number[];
  /** By depth. */
  private readonly verdicts: (Uint8Array | undefined)[] = [];
  private margins: Float64Array | undefined;

  constructor(plan: RulePlan, kinds: number) {
    this.keys = new TupleKeys(plan);
    this.depths = Array.from({ length: kinds + 1 }, (_, chosen) => this.keys.depth(chosen));
  }

  /** Verdicts by the number of the combination; undefined where there are too many. */
  verdictsAt(depth: number): Uint8Array | undefined {
    const known = this.verdicts[depth];
    const count = this.keys.counts[depth]!;
    if (known !== undefined || count > MOST) return known;
    const made = new Uint8Array(count).fill(NOT_JUDGED);
    this.verdicts[depth] = made;
    return made;
  }

  /** Margins with all chosen, likewise. */
  marginsOfAll(): Float64Array | undefined {
    const count = this.keys.counts.at(-1)!;
    if (this.margins === undefined && count <= MOST_MARGINS)
      this.margins = new Float64Array(count).fill(NOT_JUDGED);
    return this.margins;
  }
}
