import { fieldLabel, formatNumber, type Trace, type TraceValue } from "trialfit";
import { angleWords } from "./draw/angleWords.ts";
import { CurveTable } from "./draw/CurveTable.tsx";
import {
  type CurvePanel,
  curvePanels,
  curvePoints,
  degrees,
  PANEL,
  radians,
  valueAt,
} from "./draw/curvePanels.ts";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture, WIDTH } from "./draw/Picture.tsx";
import { linePath } from "./draw/path.ts";

interface Props {
  /** From `traceOverTurn`; up to four of one unit. Those that are missing are named under the chart. */
  readonly traces: readonly Trace[];
  /** Where the cursor stands: crank angle from firing top dead centre [rad]; none when left out. */
  readonly angle?: number;
  /** Called with a new angle [rad] when the cursor is moved; without it there is no slider. */
  readonly onAngle?: (angle: number) => void;
  /** Whether the values can be opened as a table. */
  readonly table?: boolean;
}

const LEFT = 44;
const RIGHT = WIDTH - 10;
const TOP = 6;
/** Width of the column of marked values. */
const COLUMN = 64;
const CYCLE = 4 * Math.PI;
const styles = ["", " second", " third", " fourth"];
const x = (angle: number) => LEFT + (angle / CYCLE) * (RIGHT - LEFT);

/** A value of a trace with its unit. */
export function traceText({ unit, decimals }: Trace, value: number): string {
  return formatNumber(value, unit, { decimals });
}

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
export function CurveChart({ traces, angle, onAngle, table = false }: Props) {
  const drawn = traces.filter((trace): trace is TraceValue => trace.state === "value");
  const missing = traces.filter((trace) => trace.state !== "value");
  const panels = curvePanels(drawn, TOP);
  const bottom = panels.at(-1)?.bottom ?? TOP;
  return (
    <div class="curve-chart">
      {drawn.length > 0 && (
        <Picture height={bottom + 36} description={describeCurves(drawn, angle)}>
          {panels.map((panel) => (
            <Panel panel={panel} angle={angle} />
          ))}
          {[0, 180, 360, 540, 720].map((degree) => (
            <text
              x={LEFT + (degree / 720) * (RIGHT - LEFT)}
              y={bottom + 16}
              text-anchor={degree === 720 ? "end" : "middle"}
            >
              {degree}°
            </text>
          ))}
          <text x={(LEFT + RIGHT) / 2} y={bottom + 32} text-anchor="middle">
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
      {table && drawn.length > 0 && <CurveTable traces={drawn} />}
    </div>
  );
}

function Panel({ panel, angle }: { readonly panel: CurvePanel; readonly angle: number | undefined }) {
  const { unit, traces, top, bottom, y, ticks, zero } = panel;
  return (
    <g>
      {traces.map((trace, index) => {
        const line = top - (traces.length - index) * PANEL.line + 11;
        return (
          <g>
            <path class={`curve${styles[index] ?? ""}`} d={`M${LEFT} ${line - 4}h20`} />
            <text x={LEFT + 25} y={line}>
              {trace.name}
            </text>
            {angle !== undefined && (
              <text class="strong" x={RIGHT - COLUMN} y={line} text-anchor="end">
                {bare(traceText(trace, valueAt(trace, angle)))}
              </text>
            )}
            <circle class="mark" cx={RIGHT - COLUMN + 10} cy={line - 4} r={4} />
            <text x={RIGHT} y={line} text-anchor="end">
              {bare(traceText(trace, trace.marked.value))}
            </text>
          </g>
        );
      })}
      {[0, 180, 360, 540, 720].map((degree) => (
        <path class="grid" d={`M${LEFT + (degree / 720) * (RIGHT - LEFT)} ${top}V${bottom}`} />
      ))}
      {ticks.map((tick) => (
        <g>
          <path class="grid" d={`M${LEFT} ${tick.y}H${RIGHT}`} />
          <text x={LEFT - 5} y={tick.y + 4} text-anchor="end">
            {tick.text}
          </text>
        </g>
      ))}
      <text x={4} y={top - 4}>
        {unit}
      </text>
      {zero !== undefined && <path class="leader" d={`M${LEFT} ${zero}H${RIGHT}`} />}
      <path class="line" d={`M${LEFT} ${top}V${bottom}H${RIGHT}`} />
      {traces.map((trace, index) => (
        <path class={`curve${styles[index] ?? ""}`} d={linePath(curvePoints(trace, x, y))} />
      ))}
      {traces.map((trace) => (
        <Extreme trace={trace} panel={panel} />
      ))}
      {angle !== undefined && (
        <g>
          <path class="cursor" d={`M${x(wrapped(angle))} ${top - 2}V${bottom}`} />
          {traces.map((trace) => (
            <circle class="dot" cx={x(wrapped(angle))} cy={y(valueAt(trace, angle))} r={3} />
          ))}
        </g>
      )}
    </g>
  );
}

/** A number without its unit, which stands at the axis. */
const bare = (text: string) => text.replace(/ .*/, "");

const wrapped = (angle: number) => ((angle % CYCLE) + CYCLE) % CYCLE;

/** The extreme that matters: a ring on the curve; its value stands in the ring of the line above. */
function Extreme({ trace, panel: { y } }: { readonly trace: TraceValue; readonly panel: CurvePanel }) {
  return <circle class="mark" cx={x(wrapped(trace.marked.angle))} cy={y(trace.marked.value)} r={5} />;
}
