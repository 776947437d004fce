import type { TraceValue } from "trialfit";
import { axisTicks } from "../../data/axisTicks.ts";

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

/**
 * Puts traces of one unit on one pair of axes, one pair under the other.
 * @param lines for each trace above its axes
 */
export function curvePanels(
  traces: readonly TraceValue[],
  start: number,
  lines: number,
): readonly CurvePanel[] {
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
    const first = top + own.length * lines * PANEL.line;
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
