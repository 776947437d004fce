import { countOf } from "../../read/countOf.ts";
import { describeReport } from "../../report/describeReport.ts";
import { groupOf } from "../../report/groupFindings.ts";
import type { Report, ReportVerdict } from "../../report/Report.ts";
import type { ReportDocument } from "../../report/ReportDocument.ts";

/** Whether a verdict speaks against the sizes found; what is unknown or to be confirmed does not rest on them. */
function speaks(verdict: ReportVerdict): boolean {
  const group = groupOf(verdict);
  return group !== undefined && group !== "unknown" && group !== "confirm";
}

/**
 * How a build stands with the sizes found.
 * @param isFull everything that the report has; otherwise what fails, is open or contradicts, the rest counted
 */
export function describeFound(report: Report, isFull: boolean): ReportDocument {
  const whole = describeReport(report, "brief");
  if (isFull) return whole;
  const shown = report.verdicts.filter(speaks);
  const { sections } = describeReport({ ...report, verdicts: shown, assumptions: [], fields: [] }, "brief");
  const { unknown, toConfirm } = report.summary;
  const rest = [
    countOf(unknown, "rule that is unknown", "rules that are unknown"),
    `${toConfirm} to be confirmed by a person`,
    countOf(report.assumptions.length, "value taken by default", "values taken by default"),
  ];
  return {
    ...whole,
    sections,
    closing: [
      `Not shown: ${rest.join(", ")}; --full shows them. A rule that is unknown or to be confirmed has not passed.`,
      ...whole.closing,
    ],
  };
}
