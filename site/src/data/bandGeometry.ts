import { type Comparison, describeComparison } from "trialfit";
import { axisTicks } from "./axisTicks.ts";
import { bandScale } from "./bandScale.ts";

const WIDTH = 360;
const LEFT = 8;
const RIGHT = WIDTH - 8;

/** A band against its limit, laid out: lengths in units of the picture, texts ready to print. */
export interface BandGeometry {
  /** What the picture shows, in words. */
  readonly text: string;
  readonly state: Comparison["state"];
  readonly width: number;
  readonly ticks: readonly { readonly x: number; readonly text: string }[];
  readonly bar: { readonly x: number; readonly width: number };
  readonly nominal: number;
  /** The limit's own band; `strict` is the end that counts. */
  readonly limit: { readonly x: number; readonly width: number; readonly strict: number };
  /** The side on which the value must not lie. */
  readonly wrong: { readonly x: number; readonly width: number; readonly towards: -1 | 1 };
  /** From the worst end of the band to the limit. */
  readonly margin: { readonly x1: number; readonly x2: number };
  readonly label: { readonly x: number; readonly text: string };
}

/** Lays out the picture of a comparison; undefined where it does not compare two numbers. */
export function bandGeometry(comparison: Comparison): BandGeometry | undefined {
  const { operator, state, unit = "1" } = comparison;
  const { text, bar } = describeComparison(comparison);
  if (bar === undefined) return undefined;
  const { low, nominal, high, limitLow, limitHigh, print } = bar;
  const { at, from, to } = bandScale([low, nominal, high, limitLow, limitHigh], LEFT, RIGHT);
  const least = operator.startsWith("greater");
  const width = Math.max(at(high) - at(low), 3);
  const worst = at(least ? low : high);
  const strict = at(least ? limitHigh : limitLow);
  return {
    text,
    state,
    width: WIDTH,
    ticks: axisTicks(from, to, unit).map(({ si, text }) => ({ x: at(si), text })),
    bar: { x: (at(low) + at(high) - width) / 2, width },
    nominal: at(nominal),
    limit: { x: at(limitLow), width: at(limitHigh) - at(limitLow), strict },
    wrong: least
      ? { x: LEFT, width: Math.max(strict - LEFT, 0), towards: -1 }
      : { x: strict, width: Math.max(RIGHT - strict, 0), towards: 1 },
    margin: { x1: Math.min(worst, strict), x2: Math.max(worst, strict) },
    label: {
      x: Math.min(Math.max(strict, 60), WIDTH - 60),
      text: `${least ? "least" : "most"} ${print(least ? limitHigh : limitLow)}`,
    },
  };
}
