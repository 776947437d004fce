import { traceKinds, unitOf, unitsLike } from "trialfit";

const lengths = new Set(unitsLike(unitOf("mm")).map(({ symbol }) => symbol));

/** Whether a trace follows a gap, which is seen in the cylinder itself rather than as a curve. */
export function isGap(trace: string): boolean {
  const { contact, extremes, unit } = traceKinds.get(trace)!;
  return contact !== undefined || (extremes[0].take === "least" && lengths.has(unit));
}
