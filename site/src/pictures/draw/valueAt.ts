import type { TraceValue } from "trialfit";

/** The value of a trace at any angle [rad], straight between its samples. */
export function valueAt({ angles, values }: TraceValue, angle: number): number {
  const cycle = angles.at(-1)!;
  const place = ((((angle % cycle) + cycle) % cycle) / cycle) * (angles.length - 1);
  const index = Math.min(Math.floor(place), angles.length - 2);
  return values[index]! + (place - index) * (values[index + 1]! - values[index]!);
}
