import { traceKinds } from "trialfit";

/** Whether a trace follows a gap, which is seen in the cylinder itself rather than as a curve. */
export function isGap(trace: string): boolean {
  const { contact, extremes } = traceKinds.get(trace)!;
  return contact !== undefined || extremes[0].take === "least";
}
