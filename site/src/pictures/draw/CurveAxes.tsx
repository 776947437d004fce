import type { TraceValue } from "trialfit";
import { prettyUnit } from "../../data/prettyUnit.ts";
import { angleAxis } from "./angleAxis.ts";
import { type CurvePanel, PANEL } from "./curvePanels.ts";
import { degrees } from "./degrees.ts";
import { linePath } from "./path.ts";
import { traceText } from "./traceText.ts";
import { valueAt } from "./valueAt.ts";

interface Props {
  readonly panel: CurvePanel;
  /** Where the cursor stands [rad]. */
  readonly angle: number | undefined;
}

/** Width of the column of marked values. */
const COLUMN = 88;
/** Classes of the curves on one pair of axes: they differ by their dashes. */
const styles = ["curve", "curve second", "curve third", "curve fourth"];
const { left, right, x, at } = angleAxis;

/** Lines that a trace has above its axes: its name, and under it its value at the cursor where there is one. */
export const linesOf = (angle: number | undefined): number => (angle === undefined ? 1 : 2);

/** A number without its unit, which stands at the axis. */
const bare = (text: string) => text.replace(/ .*/, "");

/** One pair of axes with its curves, their names and marked values above it, and the cursor. */
export function CurveAxes({ panel, angle }: Props) {
  const { unit, traces, top, bottom, y, ticks, zero } = panel;
  return (
    <g>
      {traces.map((trace, index) => (
        <Name
          trace={trace}
          style={styles[index]}
          y={top - (traces.length - index) * linesOf(angle) * PANEL.line + 11}
          angle={angle}
        />
      ))}
      {angleAxis.degrees.map((degree) => (
        <path class="grid" d={`M${at(degree)} ${top}V${bottom}`} />
      ))}
      {ticks.map((tick) => (
        <g>
          <path class="grid" d={`M${left} ${tick.y}H${right}`} />
          <text x={left - 5} y={tick.y + 4} text-anchor="end">
            {tick.text}
          </text>
        </g>
      ))}
      <text x={4} y={top - 4}>
        {prettyUnit(unit)}
      </text>
      {zero !== undefined && <path class="leader" d={`M${left} ${zero}H${right}`} />}
      <path class="line" d={`M${left} ${top}V${bottom}H${right}`} />
      {traces.map(({ angles, values }, index) => (
        <path
          class={styles[index] ?? styles[0]}
          d={linePath(angles.map((one, sample) => ({ x: x(one), y: y(values[sample]!) })))}
        />
      ))}
      {traces.map(({ marked }) => (
        <circle class="mark" cx={x(marked.angle)} cy={y(marked.value)} r={5} />
      ))}
      {angle !== undefined && (
        <g>
          <path class="cursor" d={`M${x(angle)} ${top - 2}V${bottom}`} />
          {traces.map((trace) => (
            <circle class="dot" cx={x(angle)} cy={y(valueAt(trace, angle))} r={3} />
          ))}
        </g>
      )}
    </g>
  );
}

/** What is marked of a curve: the end that matters for it. */
const endOf = ({ marked, least }: TraceValue): string => (marked.value === least.value ? "least" : "most");

/** The name of a curve with its dashes, with a dot its value at the cursor, and with a ring its marked one. */
function Name(props: {
  readonly trace: TraceValue;
  readonly style: string | undefined;
  readonly y: number;
  readonly angle: number | undefined;
}) {
  const { trace, style, y, angle } = props;
  return (
    <g>
      <path class={style ?? styles[0]} d={`M${left} ${y - 4}h20`} />
      <text x={left + 25} y={y}>
        {trace.name}
      </text>
      {angle !== undefined && (
        <g>
          <circle class="dot" cx={left + 29} cy={y + PANEL.line - 4} r={3} />
          <text class="strong" x={left + 37} y={y + PANEL.line}>
            {bare(traceText(trace, valueAt(trace, angle)))} at {Math.round(degrees(angle))}°
          </text>
        </g>
      )}
      <circle class="mark" cx={right - COLUMN} cy={y - 4} r={4} />
      <text x={right} y={y} text-anchor="end">
        {endOf(trace)} {bare(traceText(trace, trace.marked.value))}
      </text>
    </g>
  );
}
