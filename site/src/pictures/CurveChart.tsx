import { fieldLabel, type Trace, type TraceValue } from "trialfit";
import { angleAxis } from "./draw/angleAxis.ts";
import { angleWords } from "./draw/angleWords.ts";
import { CurveAxes, linesOf } from "./draw/CurveAxes.tsx";
import { CurveTable, TABLE_TITLE } from "./draw/CurveTable.tsx";
import { curvePanels } from "./draw/curvePanels.ts";
import { degrees, radians } from "./draw/degrees.ts";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture } from "./draw/Picture.tsx";
import { traceText } from "./draw/traceText.ts";
import { valueAt } from "./draw/valueAt.ts";

interface Props {
  /** From `traceOverTurn`; up to four of one unit. Those that are missing are named under the chart. */
  readonly traces: readonly Trace[];
  /** Lines under the chart, from `curveNotes`. */
  readonly notes?: readonly string[];
  /** Where the cursor stands: crank angle from firing top dead centre [rad]; none when left out. */
  readonly angle?: number;
  /** Called with a new angle [rad] when the cursor is moved; without it there is no slider. */
  readonly onAngle?: (angle: number) => void;
  /** Whether the values can be opened as a table. */
  readonly table?: boolean;
}

const TOP = 6;

/** What the chart shows, in words with its numbers. */
export function describeCurves(traces: readonly TraceValue[], angle?: number): string {
  const each = traces.map((trace) => {
    const { name, marked, least, greatest } = trace;
    const here = angle === undefined ? "" : `, ${traceText(trace, valueAt(trace, angle))} at the cursor`;
    return `${name}: ${traceText(trace, least.value)} to ${traceText(trace, greatest.value)}, marked ${traceText(trace, marked.value)} ${angleWords(marked.angle)}${here}.`;
  });
  return `Over the 720° of a cycle, from firing top dead centre. ${each.join(" ")}`;
}

/** Traces over the crank angle, each with its extreme marked, and a cursor at an angle. */
export function CurveChart({ traces, notes = [], angle, onAngle, table = false }: Props) {
  const drawn = traces.filter((trace): trace is TraceValue => trace.state === "value");
  const missing = traces.filter((trace) => trace.state !== "value");
  const panels = curvePanels(drawn, TOP, linesOf(angle));
  const bottom = panels.at(-1)?.bottom ?? TOP;
  return (
    <div class="curve-chart">
      {drawn.length > 0 && (
        <Picture height={bottom + 36} notes={notes} description={describeCurves(drawn, angle)}>
          {panels.map((panel) => (
            <CurveAxes panel={panel} angle={angle} />
          ))}
          {angleAxis.degrees.map((degree) => (
            <text x={angleAxis.at(degree)} y={bottom + 16} text-anchor={degree === 720 ? "end" : "middle"}>
              {degree}°
            </text>
          ))}
          <text x={angleAxis.at(360)} y={bottom + 32} text-anchor="middle">
            crank angle after firing TDC
          </text>
        </Picture>
      )}
      {onAngle && (
        <label class="curve-slider">
          Crank angle
          <input
            type="range"
            min={0}
            max={720}
            step={1}
            value={Math.round(degrees(angle ?? 0))}
            aria-valuetext={angleWords(angle ?? 0)}
            onInput={({ currentTarget }) => onAngle(radians(currentTarget.valueAsNumber))}
          />
        </label>
      )}
      {missing.map((trace) =>
        trace.state === "missing" ? (
          <p class="not-drawn">
            {trace.name} needs {trace.missing.map(fieldLabel).join(", ")}.
          </p>
        ) : (
          trace.state === "impossible" && (
            <p class="not-drawn">
              {trace.name}: {trace.reason}.
            </p>
          )
        ),
      )}
      {drawn.length === 0 && missing.length === 0 && <NotDrawn scene={{ state: "missing", missing: [] }} />}
      {table && drawn.length > 0 && (
        <details class="curve-table">
          <summary>{TABLE_TITLE}</summary>
          <CurveTable traces={drawn} />
        </details>
      )}
    </div>
  );
}
