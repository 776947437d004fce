import { fc, test } from "@fast-check/vitest";
import { expect } from "vitest";
import { between } from "./support.test-support.ts";

/** How the answer goes with an input: by a power of it, or only up or down with it. */
type Course = { readonly power: number } | { readonly sign: 1 | -1 };

interface Input {
  readonly low: number;
  readonly high: number;
  readonly whole: boolean;
  /** how the answer goes with it, or why it cannot be found from the answer */
  readonly course: Course | { readonly because: string };
}

const input = (low: number, high: number, course: Input["course"]): Input => ({
  low,
  high,
  whole: false,
  course,
});
/** The answer rises with the input all the way. */
export const rises = (low: number, high: number): Input => input(low, high, { sign: 1 });
/** The answer falls with the input all the way. */
export const falls = (low: number, high: number): Input => input(low, high, { sign: -1 });
/** The answer goes as a power of the input; the power is the book's, and is checked as well. */
export const goesAs = (power: number, low: number, high: number): Input => input(low, high, { power });
/** The same for a number of pieces. */
export const counted = (pieces: Input): Input => ({ ...pieces, whole: true });
/** The answer does not go one way with the input, so the input cannot be found from it. */
export const notSolved = (low: number, high: number, because: string): Input => input(low, high, { because });

/** Stretches of a range at whose ends the course of the answer is looked at. */
const STRETCHES = 6;
const BISECTIONS = 45;
/** Of the input, or of a hundredth of its range where that is more. */
const TOLERANCE = 1e-7;
const SAMPLES = 15;

function bisect(isBeyond: (x: number) => boolean, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < BISECTIONS; i++) {
    const middle = (low + high) / 2;
    if (isBeyond(middle)) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

function placesOf({ low, high, whole }: Input): readonly number[] {
  const stretches = whole ? high - low : STRETCHES;
  return Array.from({ length: stretches + 1 }, (_, i) => low + (i * (high - low)) / stretches);
}

/**
 * Finds one input back from the answer over its range, and holds the answer to its course.
 * @param name of the input, for messages
 * @param answerAt the answer by that input, all others kept
 * @param input its range and course
 * @param drawn the input that the answer was had with
 */
export function recover(name: string, answerAt: (x: number) => number, input: Input, drawn: number): void {
  const { low, high, whole, course } = input;
  if ("because" in course) return;
  const places = placesOf(input);
  const answers = places.map(answerAt);
  const sign = "sign" in course ? course.sign : Math.sign(course.power * answers[0]!);
  answers.slice(1).forEach((answer, i) => {
    const where = `${name} from ${places[i]} to ${places[i + 1]}: ${answers[i]} to ${answer}`;
    expect(sign * (answer - answers[i]!), where).toBeGreaterThan(0);
    if (!("power" in course)) return;
    const expected = (places[i + 1]! / places[i]!) ** course.power;
    const off = Math.abs(answer / answers[i]! / expected - 1);
    expect(off, `${where}, power ${course.power}`).toBeLessThan(1e-9);
  });
  const answer = answerAt(drawn);
  const solved = whole
    ? places.find((_, i) => answers[i] === answer)!
    : bisect((x) => sign * (answerAt(x) - answer) > 0, low, high);
  const allowed = TOLERANCE * Math.max(Math.abs(drawn), (high - low) / 100);
  expect(Math.abs(solved - drawn), `${name}: found ${solved} for ${drawn}`).toBeLessThanOrEqual(allowed);
}

/**
 * A property test over sizes that an engine could have: the answer goes with each input as it is said to, and each
 * input is found back from the answer, all others known. It fails when it finds none.
 * @param fn the function, for the name of the test
 * @param inputs range and course of each number
 * @param call the answer from the numbers; left out when the function takes just them
 * @param samples fewer for a function that searches
 */
export function solvesBack<N extends string>(
  fn: (input: Readonly<Record<N, number>>) => number,
  inputs: Readonly<Record<N, Input>>,
): void;
export function solvesBack<N extends string>(
  fn: { readonly name: string },
  inputs: Readonly<Record<N, Input>>,
  call: (values: Readonly<Record<N, number>>) => number,
  samples?: number,
): void;
export function solvesBack<N extends string>(
  fn: { readonly name: string },
  inputs: Readonly<Record<N, Input>>,
  call: (values: Readonly<Record<N, number>>) => number = fn as never,
  samples = SAMPLES,
): void {
  const entries = Object.entries<Input>(inputs) as [N, Input][];
  const ranges = entries.map(([name, { low, high, whole }]) => [
    name,
    whole ? fc.integer({ min: low, max: high }) : between(low, high),
  ]);
  const drawn = Object.fromEntries(ranges) as Record<N, fc.Arbitrary<number>>;
  const solved = entries.filter(([, { course }]) => !("because" in course));
  const names = solved.map(([name]) => name).join(", ");
  test.prop([fc.record(drawn)], { numRuns: samples })(`${fn.name} gives back ${names}`, (record) => {
    const values = record as Readonly<Record<N, number>>;
    expect(solved.length, "inputs to find back").toBeGreaterThan(0);
    for (const [name, { course }] of entries)
      if ("because" in course) expect(course.because.length, `${name}: the reason`).toBeGreaterThan(15);
    for (const [name, one] of solved) recover(name, (x) => call({ ...values, [name]: x }), one, values[name]);
  });
}
