import type { Report } from "trialfit";
import type { ReportView } from "../protocol.ts";

/** How many rules say what. */
export function countsOf(
  { holds, fails, open, unknown, toConfirm, notApplicable }: Report["summary"],
  pending: Report["pending"],
): ReportView["counts"] {
  return { pending: pending?.rules.length ?? 0, fails, open, unknown, toConfirm, holds, notApplicable };
}
