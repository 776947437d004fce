import { confirmLines } from "./confirmationLines.ts";
import type { Detail } from "./describeFinding.ts";
import type { Report, ReportVerdict } from "./Report.ts";
import type { DocumentItem, DocumentLine, DocumentSection } from "./ReportDocument.ts";

/** What a person must look at, when, and what it looks like when it is not right. */
export function describeToConfirm(verdict: ReportVerdict, detail: Detail): DocumentItem {
  const { confirm, weight, work, because, caution, rule, title } = verdict;
  const lines: DocumentLine[] = [
    { label: "confirm", text: `weight: ${weight}; work: ${work}`, tone: "doubt" },
    ...(confirm === undefined ? [] : confirmLines(confirm)),
    ...(detail === "full" ? [{ label: "why", text: because }] : []),
    ...(caution === undefined ? [] : [{ label: "caution", text: caution, tone: "bad" as const }]),
  ];
  return { title, id: rule, tone: "doubt", lines };
}

/** Confirmations that no rule asks for: somebody may think that they count. */
export function straySection(report: Report): DocumentSection {
  return {
    heading: `Confirmed, but no rule asks for it (${report.strayConfirmations.length})`,
    items: report.strayConfirmations.map(({ rule, didYouMean }) => ({
      title: `confirmations.${rule}`,
      tone: "doubt",
      lines: [
        {
          text: `no rule has this name${didYouMean === undefined ? "" : `; did you mean "${didYouMean}"?`}: it counts for nothing`,
        },
      ],
    })),
  };
}
