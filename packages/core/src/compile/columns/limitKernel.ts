import { Outcome } from "../Outcome.ts";
import type { EndColumns, Kernel, Outcomes } from "./kernels.ts";

/** One case of a limit: what its condition comes to, and the value that the limit then has. */
export interface CaseColumn {
  readonly when: Outcomes;
  readonly value: number;
}

/** Cases whose outcomes together number what is tabulated: four for each. */
const TABULATED = 5;

interface Ends {
  readonly low: number;
  readonly high: number;
  readonly lack: number;
}

/** From the last case to the first: one that surely stands hides those behind it, one that may stand adds to them. */
function endsOf(values: readonly number[], otherwise: number, outcomeOf: (index: number) => number): Ends {
  let [low, high, lack] = [otherwise, otherwise, 0];
  for (let index = values.length - 1; index >= 0; index -= 1) {
    const [value, outcome] = [values[index]!, outcomeOf(index)];
    if ((outcome & 1) !== 0) [low, high, lack] = [value, value, 0];
    else if (outcome !== 0) {
      low = Math.min(low, value);
      high = Math.max(high, value);
      lack |= outcome & 4;
    }
  }
  return { low, high, lack };
}

/** Ends of a limit by a number, to be looked up. */
interface EndTables {
  readonly lows: Float64Array;
  readonly highs: Float64Array;
  readonly lacks: Uint8Array;
}

function tablesOf(length: number, endsAt: (number: number) => Ends): EndTables {
  const every = Array.from({ length }, (_, number) => endsAt(number));
  return {
    lows: Float64Array.from(every, ({ low }) => low),
    highs: Float64Array.from(every, ({ high }) => high),
    lacks: Uint8Array.from(every, ({ lack }) => lack),
  };
}

/** Outcomes in the order of their two bits: of an outcome these are `(outcome & 1) + (outcome >> 1)`. */
const OUTCOMES = [Outcome.no, Outcome.open, Outcome.yes, Outcome.lacking] as const;

/** A limit with few cases: what all of them come to is looked up at once. */
function tabulated(cases: readonly CaseColumn[], otherwise: number, { low, high, lack }: EndColumns): Kernel {
  const values = cases.map(({ value }) => value);
  const { lows, highs, lacks } = tablesOf(4 ** cases.length, (number) =>
    endsOf(values, otherwise, (index) => OUTCOMES[(number >> (2 * index)) & 3]!),
  );
  const [first, ...others] = cases.map(({ when }) => when.bytes) as [Uint8Array, ...Uint8Array[]];
  return (count) => {
    for (let at = 0; at < count; at += 1) {
      let number = (first[at]! & 1) + (first[at]! >> 1);
      for (let index = 0; index < others.length; index += 1) {
        const outcome = others[index]![at]!;
        number |= ((outcome & 1) + (outcome >> 1)) << (2 * index + 2);
      }
      low[at] = lows[number]!;
      high[at] = highs[number]!;
      lack[at] = lacks[number]!;
    }
  };
}

/** By outcome, what a case makes of the ends that those behind it leave: all of it by least and greatest. */
function caseTables(value: number) {
  const { open, yes, lacking } = Outcome;
  const table = (outside: number, entries: Readonly<Record<number, number>>) =>
    Float64Array.from({ length: lacking + 1 }, (_, outcome) => entries[outcome] ?? outside);
  return {
    clear: table(-Infinity, { [yes]: Infinity }),
    add: table(Infinity, { [open]: value, [yes]: value, [lacking]: value }),
    addHigh: table(-Infinity, { [open]: value, [yes]: value, [lacking]: value }),
  };
}

/** A limit with many cases: one after the other, from the last. */
function chained(cases: readonly CaseColumn[], otherwise: number, { low, high, lack }: EndColumns): Kernel {
  const steps = cases.map(({ when, value }) => ({ bytes: when.bytes, ...caseTables(value) })).reverse();
  return (count) => {
    low.fill(otherwise, 0, count);
    high.fill(otherwise, 0, count);
    lack.fill(0, 0, count);
    for (const { bytes, clear, add, addHigh } of steps)
      for (let at = 0; at < count; at += 1) {
        const outcome = bytes[at]!;
        low[at] = Math.min(Math.max(low[at]!, clear[outcome]!), add[outcome]!);
        high[at] = Math.max(Math.min(high[at]!, -clear[outcome]!), addHigh[outcome]!);
        lack[at] = (lack[at]! & ((outcome & 1) - 1)) | (outcome & 4);
      }
  };
}

/** The value of a limit: that of the first case that surely stands, or the band over every one that may. */
export function limitKernel(cases: readonly CaseColumn[], otherwise: number, into: EndColumns): Kernel {
  return cases.length > TABULATED ? chained(cases, otherwise, into) : tabulated(cases, otherwise, into);
}

/**
 * The value of a limit whose cases all ask for the word of one fact.
 * @param outcomes of each case, by the number of the word
 */
export function limitByWord(
  word: EndColumns,
  outcomes: readonly Uint8Array[],
  values: readonly number[],
  otherwise: number,
  { low, high, lack }: EndColumns,
): Kernel {
  const { lows, highs, lacks } = tablesOf(outcomes[0]!.length, (number) =>
    endsOf(values, otherwise, (index) => outcomes[index]![number]!),
  );
  const numbers = word.low;
  return (count) => {
    for (let at = 0; at < count; at += 1) {
      const number = numbers[at]!;
      low[at] = lows[number]!;
      high[at] = highs[number]!;
      lack[at] = lacks[number]!;
    }
  };
}
