import { isConfirmationPath } from "../read/confirmations.ts";
import { confirmationLines } from "./confirmationLines.ts";
import { describeComparison } from "./describeComparison.ts";
import { likelyLines } from "./describeLikely.ts";
import { describeOpen } from "./describeOpen.ts";
import { describePlaces } from "./describePlaces.ts";
import { nameFields } from "./nameFields.ts";
import { nameSource } from "./nameSource.ts";
import type { Report, ReportVerdict } from "./Report.ts";
import type { DocumentItem, DocumentLine, Tone } from "./ReportDocument.ts";

const TONES: Readonly<Record<ReportVerdict["verdict"], Tone>> = {
  holds: "good",
  fails: "bad",
  open: "doubt",
  unknown: "doubt",
  "not-applicable": "faint",
};

/** What a rule compared, a line each. */
export function requirements(verdict: ReportVerdict): readonly DocumentLine[] {
  return verdict.comparisons
    .filter((one) => one.in === "requires" && !isConfirmationPath(one.fact))
    .map((one) =>
      one.alternative ? { label: "one of", ...describeComparison(one) } : describeComparison(one),
    );
}

/** How much of a finding is shown: all of it, or its numbers and what to do. */
export type Detail = "full" | "brief";

/** What a verdict rests on that nobody measured or published; nothing where there is none. */
export function assumedLine({ assumed }: ReportVerdict): readonly DocumentLine[] {
  if (assumed.length === 0) return [];
  const text = `values not measured, but assumed or estimated: ${nameFields(assumed)}`;
  return [{ label: "rests on", text }];
}

function grounds(verdict: ReportVerdict): readonly DocumentLine[] {
  const standings = [...new Set(Object.values(verdict.standing))];
  return [
    ...(verdict.disputed === undefined ? [] : [{ label: "disputed", text: verdict.disputed }]),
    ...assumedLine(verdict),
    ...verdict.takenFor.map((text) => ({ label: "rests on", text })),
    ...(standings.length === 0
      ? []
      : [
          {
            label: "limit by",
            text: standings.map((one) => one.replaceAll("-", " ")).join(", "),
            tone: "faint" as const,
          },
        ]),
    { label: "source", text: verdict.sources.map(nameSource).join("; "), tone: "faint" },
  ];
}

function unsettled(verdict: ReportVerdict): readonly DocumentLine[] {
  const lines: DocumentLine[] = [];
  if (verdict.places !== undefined) lines.push({ label: "where", text: describePlaces(verdict) });
  if (verdict.verdict === "open") lines.push(...describeOpen(verdict));
  if (verdict.missing.length > 0) lines.push({ label: "needs", text: nameFields(verdict.missing) });
  return [...lines, ...verdict.reasons.map((text) => ({ label: "cannot be", text }))];
}

/**
 * One verdict with its numbers, trace, reason and remedy.
 * @param report where the verdict is from, for what drawn engines say of it
 */
export function describeFinding(
  verdict: ReportVerdict,
  detail: Detail = "full",
  report?: Report,
): DocumentItem {
  const tone = TONES[verdict.verdict];
  const lines: DocumentLine[] = [
    { label: verdict.verdict, text: `weight: ${verdict.weight}; work: ${verdict.work}`, tone },
    ...requirements(verdict),
    ...confirmationLines(verdict),
    ...unsettled(verdict),
    ...(report === undefined ? [] : likelyLines(verdict, report)),
  ];
  if (detail === "full") lines.push({ label: "why", text: verdict.because });
  if (verdict.remedy !== undefined && verdict.remedy !== "")
    lines.push({ label: "do", text: verdict.remedy });
  if (verdict.caution !== undefined) lines.push({ label: "caution", text: verdict.caution, tone: "bad" });
  if (detail === "full") lines.push(...grounds(verdict));
  return { title: verdict.title, id: verdict.rule, tone, lines };
}

/** A verdict that could not be given: what it needs. */
export function describeUnknown(verdict: ReportVerdict): DocumentItem {
  return {
    title: verdict.title,
    id: verdict.rule,
    tone: "doubt",
    lines: [
      { label: "unknown", text: `weight: ${verdict.weight}; work: ${verdict.work}`, tone: "doubt" },
      ...unsettled(verdict),
    ],
  };
}
