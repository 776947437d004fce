import { fieldLabel } from "../read/fieldCatalog.ts";
import { describeComparison } from "./describeComparison.ts";
import { type FindingGroup, findingGroups, groupFindings } from "./groupFindings.ts";
import type { Report, ReportVerdict } from "./Report.ts";
import type { DocumentItem, DocumentLine, DocumentSection, ReportDocument, Tone } from "./ReportDocument.ts";

const TONES: Readonly<Record<ReportVerdict["verdict"], Tone>> = {
  holds: "good",
  fails: "bad",
  open: "doubt",
  unknown: "doubt",
  "not-applicable": "faint",
};

/** What stands at the end of every report. */
export const DISCLAIMER =
  "These are checks of the numbers that were entered, not a promise. The part maker's instructions, local codes and qualified people come first; the person who measures and signs decides.";

function names(paths: readonly string[]): string {
  return paths.map((path) => `${fieldLabel(path)} [${path}]`).join("; ");
}

function requirements(verdict: ReportVerdict): readonly DocumentLine[] {
  return verdict.comparisons
    .filter((one) => one.in === "requires")
    .map((one) =>
      one.alternative ? { label: "one of", ...describeComparison(one) } : describeComparison(one),
    );
}

/** One verdict with its numbers, trace, reason and remedy. */
export function describeFinding(verdict: ReportVerdict): DocumentItem {
  const lines: DocumentLine[] = [
    {
      label: verdict.verdict,
      text: `weight: ${verdict.weight}; work: ${verdict.work}`,
      tone: TONES[verdict.verdict],
    },
  ];
  lines.push(...requirements(verdict));
  if (verdict.verdict === "open") {
    const side = verdict.nominally ? "holds" : "fails";
    lines.push({
      label: "open",
      text: `${side} at the nominal values; the tolerances reach across the limit`,
    });
    if (verdict.settleBy.length > 0)
      lines.push({ label: "measure", text: names(verdict.settleBy.slice(0, 4)) });
  }
  if (verdict.missing.length > 0) lines.push({ label: "needs", text: names(verdict.missing) });
  for (const reason of verdict.reasons) lines.push({ label: "cannot be", text: reason });
  lines.push({ label: "why", text: verdict.because });
  if (verdict.remedy !== undefined) lines.push({ label: "do", text: verdict.remedy });
  if (verdict.caution !== undefined) lines.push({ label: "caution", text: verdict.caution, tone: "bad" });
  if (verdict.disputed !== undefined) lines.push({ label: "disputed", text: verdict.disputed });
  if (verdict.assumed.length > 0)
    lines.push({ label: "rests on", text: `assumed: ${names(verdict.assumed)}` });
  const standings = [...new Set(Object.values(verdict.standing))];
  if (standings.length > 0) lines.push({ label: "limit", text: standings.join(", "), tone: "faint" });
  return { title: verdict.title, id: verdict.rule, tone: TONES[verdict.verdict], lines };
}

function unknown(verdict: ReportVerdict): DocumentItem {
  const lines: DocumentLine[] = [
    { label: "unknown", text: `weight: ${verdict.weight}; work: ${verdict.work}`, tone: "doubt" },
  ];
  if (verdict.missing.length > 0) lines.push({ label: "needs", text: names(verdict.missing) });
  for (const reason of verdict.reasons) lines.push({ label: "cannot be", text: reason });
  return { title: verdict.title, id: verdict.rule, tone: "doubt", lines };
}

function askFirst(verdicts: readonly ReportVerdict[]): string {
  const counts = new Map<string, number>();
  for (const path of verdicts.flatMap((verdict) => verdict.missing))
    counts.set(path, (counts.get(path) ?? 0) + 1);
  const first = [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).slice(0, 6);
  return first.length === 0
    ? ""
    : `Ask for these first: ${first.map(([path, count]) => `${fieldLabel(path)} (${count} rules)`).join("; ")}.`;
}

function findingSection(group: FindingGroup, verdicts: readonly ReportVerdict[]): DocumentSection {
  const heading = `${findingGroups[group]} (${verdicts.length})`;
  return group === "unknown"
    ? {
        heading,
        intro: `${askFirst(verdicts)} A rule that could not be judged has not passed.`.trim(),
        items: verdicts.map(unknown),
      }
    : { heading, items: verdicts.map(describeFinding) };
}

function heldSection(report: Report): DocumentSection {
  const held = report.verdicts.filter((verdict) => verdict.verdict === "holds");
  return {
    heading: `Holds (${held.length})`,
    items: held.map((verdict) => ({
      title: verdict.title,
      id: verdict.rule,
      tone: "good",
      lines: requirements(verdict).map(({ bar: _, ...line }) => ({ ...line, tone: "faint" as const })),
    })),
  };
}

function assumptionSection(report: Report): DocumentSection {
  const reasons = new Set(report.assumptions.map(({ because }) => because));
  const items = [...reasons].map((reason): DocumentItem => {
    const taken = report.assumptions.filter(({ because }) => because === reason);
    return {
      title: taken.map(({ path, text }) => `${fieldLabel(path)}: ${text}`).join("; "),
      tone: "doubt",
      lines: [{ text: reason }],
    };
  });
  const byDefault = report.fields.filter(
    (field) =>
      field.toleranceFrom === "default" && !report.assumptions.some((one) => one.path === field.path),
  );
  if (byDefault.length > 0) {
    items.push({
      title: `${byDefault.length} values were given without a tolerance; the usual one of their field was taken`,
      tone: "doubt",
      lines: [{ text: byDefault.map((field) => `${field.label} ${field.text}`).join("; ") }],
    });
  }
  return { heading: "Assumed", items };
}

function headline(report: Report): DocumentLine {
  const { summary } = report;
  if (summary.sound)
    return { text: "SOUND: every stop rule that applies holds over all tolerances.", tone: "good" };
  const count = (word: string) =>
    report.verdicts.filter((one) => one.weight === "stop" && one.verdict === word).length;
  const parts = [
    [count("fails"), "fail"],
    [count("open"), "open"],
    [count("unknown"), "unknown"],
  ].filter(([number]) => number !== 0);
  return {
    text: `NOT SOUND: of the stop rules, ${parts.map(([number, word]) => `${number} ${word}`).join(", ")}.`,
    tone: "bad",
  };
}

/** Lays out a report in the order of what the builder must do. */
export function describeReport(report: Report): ReportDocument {
  const { summary } = report;
  const groups = [...groupFindings(report)].filter(([, verdicts]) => verdicts.length > 0);
  const skipped = report.verdicts.filter((verdict) => verdict.verdict === "not-applicable");
  return {
    title: report.build.name,
    lead: [
      headline(report),
      {
        text: `${report.verdicts.length} rules: ${summary.holds} hold, ${summary.fails} fail, ${summary.open} open, ${summary.unknown} unknown, ${summary.notApplicable} not applicable`,
      },
      {
        text: `trialfit ${report.trialfit}; stage: ${report.stage}; build ${report.build.hash.slice(0, 12)}`,
        tone: "faint",
      },
    ],
    sections: [
      ...groups.map(([group, verdicts]) => findingSection(group, verdicts)),
      heldSection(report),
      {
        heading: `Not applicable (${skipped.length})`,
        items: skipped.map((verdict) => ({
          title: verdict.title,
          id: verdict.rule,
          tone: "faint" as const,
          lines: [],
        })),
      },
      assumptionSection(report),
    ].filter((section) => section.items.length > 0),
    closing: [DISCLAIMER],
  };
}
