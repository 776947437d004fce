import { greatestBetween } from "@trialfit/mechanics";
import type { TracePoint } from "./Trace.ts";

/** Peaks this share of the whole swing below the highest sample are refined too: the samples may rank them wrongly. */
const NEARLY = 0.02;
/** Cells between the neighbours of a sample in which its peak is sought. */
const CELLS = 4;

function greatestOf(
  angles: readonly number[],
  samples: readonly number[],
  value: (angle: number) => number,
): TracePoint {
  const highest = Math.max(...samples);
  const enough = highest - NEARLY * (highest - Math.min(...samples));
  let best: TracePoint = { angle: angles[samples.indexOf(highest)]!, value: highest };
  samples.forEach((here, index) => {
    const [before, after] = [samples[index - 1] ?? here, samples[index + 1] ?? here];
    if (here < enough || here < before || here < after || (here === before && here === after)) return;
    const from = angles[Math.max(0, index - 1)]!;
    const to = angles[Math.min(angles.length - 1, index + 1)]!;
    const peak = greatestBetween(value, from, to, CELLS);
    if (peak.value > best.value) best = { angle: peak.at, value: peak.value };
  });
  return best;
}

/**
 * Least and greatest of a trace, refined between its samples.
 * @param angles of the samples [rad], rising
 * @param samples the values there
 * @param value the same at any angle
 */
export function extremesOf(
  angles: readonly number[],
  samples: readonly number[],
  value: (angle: number) => number,
): { readonly least: TracePoint; readonly greatest: TracePoint } {
  const turned = greatestOf(
    angles,
    samples.map((one) => -one),
    (angle) => -value(angle),
  );
  return {
    least: { angle: turned.angle, value: -turned.value },
    greatest: greatestOf(angles, samples, value),
  };
}
