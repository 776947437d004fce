import { fromSi, type TraceValue, unitOf } from "trialfit";
import { axisTicks } from "../../data/axisTicks.ts";
import type { Point } from "../scene/Scene.ts";

/** Traces that share one pair of axes: those of one unit. */
export interface CurvePanel {
  readonly unit: string;
  readonly traces: readonly TraceValue[];
  readonly top: number;
  readonly bottom: number;
  readonly y: (value: number) => number;
  readonly ticks: readonly { readonly y: number; readonly text: string }[];
  readonly zero: number | undefined;
}

/** Height of one pair of axes, and the room for its names above it. */
export const PANEL = { height: 118, line: 15, gap: 12 };

/** Puts traces of one unit on one pair of axes, one pair under the other. */
export function curvePanels(traces: readonly TraceValue[], start: number): readonly CurvePanel[] {
  const units = [...new Set(traces.map(({ unit }) => unit))];
  let top = start;
  return units.map((unit) => {
    const own = traces.filter((trace) => trace.unit === unit);
    const ends = own.flatMap(({ least, greatest }) => [least.value, greatest.value]);
    const span = Math.max(...ends) - Math.min(...ends) || Math.abs(ends[0]!) || 1;
    // Nothing is shown from nothing, where nothing is near: the eye then judges sizes rightly.
    const lowest = Math.min(...ends);
    const from = lowest >= 0 && lowest < span ? 0 : lowest - 0.06 * span;
    const to = Math.max(...ends) + 0.08 * span;
    const first = top + own.length * PANEL.line;
    const bottom = first + PANEL.height;
    top = bottom + PANEL.gap;
    const y = (value: number) => bottom - ((value - from) / (to - from)) * PANEL.height;
    const ticks = axisTicks(from, to, unit).map(({ si, text }) => ({
      y: y(si),
      text: text.replace(/ .*/, ""),
    }));
    return { unit, traces: own, top: first, bottom, y, ticks, zero: from < 0 && to > 0 ? y(0) : undefined };
  });
}

/** Points of a trace on its panel. */
export function curvePoints(
  { angles, values }: TraceValue,
  x: (angle: number) => number,
  y: (value: number) => number,
): readonly Point[] {
  return angles.map((angle, index) => ({ x: x(angle), y: y(values[index]!) }));
}

/** The value of a trace at any angle [rad], straight between its samples. */
export function valueAt({ angles, values }: TraceValue, angle: number): number {
  const cycle = angles.at(-1)!;
  const place = ((((angle % cycle) + cycle) % cycle) / cycle) * (angles.length - 1);
  const index = Math.min(Math.floor(place), angles.length - 2);
  return values[index]! + (place - index) * (values[index + 1]! - values[index]!);
}

/** Degrees of a crank angle. */
export const degrees = (angle: number): number => fromSi(angle, unitOf("deg"));

/** A crank angle from degrees. */
export const radians = (angle: number): number => (angle / 180) * Math.PI;
