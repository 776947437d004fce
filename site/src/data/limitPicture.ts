import { type CompiledRule, parseDimension } from "trialfit";
import { axisTicks } from "./axisTicks.ts";
import { bandScale } from "./bandScale.ts";

type Limit = CompiledRule["limits"][number];

/** Size of the picture, in its own units. */
export const LIMIT = { width: 360, height: 58, left: 10, right: 350, axis: 36 } as const;

/** Where in the trade's range a limit stands, and where it goes in its cases. */
export interface LimitPicture {
  readonly text: string;
  readonly range: { readonly x: number; readonly width: number };
  readonly value: { readonly x: number; readonly text: string };
  readonly cases: readonly { readonly x: number; readonly text: string }[];
  readonly ticks: readonly { readonly x: number; readonly text: string }[];
}

/** The picture of a limit; undefined where the trade's range is one single value. */
export function limitPicture(
  { unit, value, cases }: Limit,
  file: NonNullable<CompiledRule["file"]["limits"]>[string],
): LimitPicture | undefined {
  const [least, most] = file.range.map((edge) => parseDimension(edge, { unit }).nominal) as [number, number];
  const others = [...new Map(cases.map((one) => [one.text, one.value]))];
  const all = [least, most, value, ...others.map(([, si]) => si)];
  if (Math.min(...all) === Math.max(...all)) return undefined;
  const { left, right } = LIMIT;
  const { at, from, to } = bandScale(all, left, right);
  return {
    text: `Range in the trade from ${file.range[0]} to ${file.range[1]}; the limit is ${file.value}${others.map(([text]) => `, in a case ${text}`).join("")}`,
    range: { x: at(least), width: Math.max(at(most) - at(least), 2) },
    value: { x: at(value), text: file.value },
    cases: others.map(([text, si]) => ({ x: at(si), text })),
    ticks: axisTicks(from, to, unit).map(({ si, text }) => ({ x: at(si), text })),
  };
}
