import { formatNumber, traceKinds } from "trialfit";

/** A gap of a trace with its unit. */
export const gapText = (trace: string, clearance: number) => {
  const { unit, decimals } = traceKinds.get(trace)!;
  return formatNumber(clearance, unit, { decimals });
};
