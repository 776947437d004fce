import { type Comparison, describeComparison } from "trialfit";
import { axisTicks } from "./axisTicks.ts";
import { bandScale } from "./bandScale.ts";

/** Size of the picture, in its own units. */
export const BAND = { width: 360, height: 88, left: 8, right: 352, top: 20, axis: 66 } as const;

/** A band against its limit, ready to be drawn: places along the picture, and words. */
export interface BandPicture {
  /** The picture in words. */
  readonly text: string;
  readonly state: Comparison["state"];
  readonly ticks: readonly { readonly x: number; readonly text: string }[];
  readonly bar: { readonly x: number; readonly width: number };
  readonly nominal: number;
  /** The limit, `strict` where it is strictest; it has a width where its own case is not settled. */
  readonly limit: { readonly x: number; readonly width: number; readonly strict: number };
  readonly wrong: { readonly x: number; readonly width: number };
  readonly hatch: string;
  readonly margin: { readonly x1: number; readonly x2: number };
  readonly label: { readonly x: number; readonly text: string };
}

/** The picture of one comparison of numbers; undefined for words and where a side is missing. */
export function bandPicture(comparison: Comparison): BandPicture | undefined {
  const { operator, state, unit = "1" } = comparison;
  const { text, bar } = describeComparison(comparison);
  if (bar === undefined) return undefined;
  const { low, nominal, high, limitLow, limitHigh, print } = bar;
  const { left, right, top, width: whole } = BAND;
  const { at, from, to } = bandScale([low, nominal, high, limitLow, limitHigh], left, right);
  const least = operator.startsWith("greater");
  const width = Math.max(at(high) - at(low), 3);
  const worst = at(least ? low : high);
  const strict = at(least ? limitHigh : limitLow);
  return {
    text,
    state,
    ticks: axisTicks(from, to, unit).map(({ si, text }) => ({ x: at(si), text })),
    bar: { x: (at(low) + at(high) - width) / 2, width },
    nominal: at(nominal),
    limit: { x: at(limitLow), width: at(limitHigh) - at(limitLow), strict },
    wrong: least
      ? { x: left, width: Math.max(strict - left, 0) }
      : { x: strict, width: Math.max(right - strict, 0) },
    hatch: [0, 6, 12, 18, 24, 30, 36].map((y) => `M${strict} ${top + y}l${least ? -8 : 8} 8`).join(""),
    margin: { x1: Math.min(worst, strict), x2: Math.max(worst, strict) },
    label: {
      x: Math.min(Math.max(strict, 60), whole - 60),
      text: `${least ? "least" : "most"} ${print(least ? limitHigh : limitLow)}`,
    },
  };
}
