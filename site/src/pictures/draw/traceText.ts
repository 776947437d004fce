import { formatNumber, type Trace } from "trialfit";

/** A value of a trace with its unit. */
export function traceText({ unit, decimals }: Trace, value: number): string {
  return formatNumber(value, unit, { decimals });
}
