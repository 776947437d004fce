import type { Operator } from "@trialfit/rules";
import { LACKING, Outcome, SURELY } from "./Outcome.ts";
import { VerdictCode } from "./verdictCodes.ts";

/** Reads slots and says what a condition comes to: an {@link Outcome}. */
export type Condition = () => number;

/** Where ends of bands stand, and what is missing of them. */
export interface Ends {
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly lack: Uint8Array;
}

type Order = Extract<Operator, `${"less" | "greater"}${string}`>;

/** A comparison of a slot with a number. */
export const withNumber: Readonly<Record<Order, (at: Ends, slot: number, number: number) => Condition>> = {
  greaterThan:
    ({ low, high, lack }, slot, number) =>
    () =>
      low[slot]! > number ? Outcome.yes : high[slot]! > number ? Outcome.open | lack[slot]! : Outcome.no,
  greaterThanInclusive:
    ({ low, high, lack }, slot, number) =>
    () =>
      low[slot]! >= number ? Outcome.yes : high[slot]! >= number ? Outcome.open | lack[slot]! : Outcome.no,
  lessThan:
    ({ low, high, lack }, slot, number) =>
    () =>
      high[slot]! < number ? Outcome.yes : low[slot]! < number ? Outcome.open | lack[slot]! : Outcome.no,
  lessThanInclusive:
    ({ low, high, lack }, slot, number) =>
    () =>
      high[slot]! <= number ? Outcome.yes : low[slot]! <= number ? Outcome.open | lack[slot]! : Outcome.no,
};

/** A comparison of a slot with another one, which may stand elsewhere. */
export const withSlot: Readonly<
  Record<Order, (at: Ends, slot: number, other: Ends, against: number) => Condition>
> = {
  greaterThan:
    ({ low, high, lack }, slot, { low: least, high: most, lack: lacks }, against) =>
    () =>
      low[slot]! > most[against]!
        ? Outcome.yes
        : high[slot]! > least[against]!
          ? Outcome.open | lack[slot]! | lacks[against]!
          : Outcome.no,
  greaterThanInclusive:
    ({ low, high, lack }, slot, { low: least, high: most, lack: lacks }, against) =>
    () =>
      low[slot]! >= most[against]!
        ? Outcome.yes
        : high[slot]! >= least[against]!
          ? Outcome.open | lack[slot]! | lacks[against]!
          : Outcome.no,
  lessThan: (at, slot, other, against) => withSlot.greaterThan(other, against, at, slot),
  lessThanInclusive: (at, slot, other, against) => withSlot.greaterThanInclusive(other, against, at, slot),
};

/** Whether the word of a slot is among some. @param outcomes by the number of the word: what that comes to */
export function withWords({ low }: Ends, slot: number, outcomes: Uint8Array): Condition {
  return () => outcomes[low[slot]!]!;
}

/** Every condition. */
export function all(conditions: readonly Condition[]): Condition {
  const [first, second] = conditions;
  if (first === undefined) return () => Outcome.yes;
  if (second === undefined) return first;
  return () => {
    let both: number = Outcome.yes;
    let either = 0;
    for (let index = 0; index < conditions.length; index += 1) {
      const outcome = conditions[index]!();
      if (outcome === Outcome.no) return Outcome.no;
      both &= outcome;
      either |= outcome;
    }
    return (both & SURELY) !== 0 ? Outcome.yes : Outcome.open | (either & LACKING);
  };
}

/** Any condition. */
export function any(conditions: readonly Condition[]): Condition {
  const [first, second] = conditions;
  if (first === undefined) return () => Outcome.no;
  if (second === undefined) return first;
  return () => {
    let either: number = Outcome.no;
    for (let index = 0; index < conditions.length; index += 1) {
      const outcome = conditions[index]!();
      if (outcome === Outcome.yes) return Outcome.yes;
      either |= outcome;
    }
    return either;
  };
}

/** The verdict, as a code, from what `when` and `requires` come to. */
export function codeFor(when: number, requires: number): number {
  if (when === Outcome.no) return VerdictCode.notApplicable;
  if (requires === Outcome.yes) return VerdictCode.holds;
  if (when === Outcome.yes && requires === Outcome.no) return VerdictCode.fails;
  return ((when | requires) & LACKING) !== 0 ? VerdictCode.unknown : VerdictCode.open;
}
