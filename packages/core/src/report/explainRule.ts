import { type RuleFile, sources, standings, weights, works } from "@trialfit/rules";
import { factType } from "../judge/factCatalog.ts";
import { templatePieces } from "../judge/templateNames.ts";
import { confirmLines } from "./confirmationLines.ts";
import { describeCondition } from "./describeCondition.ts";
import { describeFinding } from "./describeFinding.ts";
import { DISCLAIMER, statisticsNote } from "./describeReport.ts";
import { nameSource } from "./nameSource.ts";
import type { Report } from "./Report.ts";
import type { DocumentItem, DocumentLine, DocumentSection, ReportDocument } from "./ReportDocument.ts";

/** A text with what is printed in it named, for when there is no build to print. */
function named(text: string, file: RuleFile): string {
  return templatePieces(text)
    .map((piece) => {
      if ("text" in piece) return piece.text;
      const limit = file.limits?.[piece.name.replace(/^limit\./, "")];
      return limit?.value ?? `‹${factType(piece.name)?.label.toLowerCase() ?? piece.name}›`;
    })
    .join("");
}

function limitItem([name, limit]: [string, NonNullable<RuleFile["limits"]>[string]]): DocumentItem {
  const lines: DocumentLine[] = [
    { label: "range", text: `${limit.range[0]} to ${limit.range[1]} in the trade` },
    { label: "standing", text: `${limit.standing}: ${standings[limit.standing]}` },
    ...(limit.cases ?? []).map((one) => ({
      label: "case",
      text: `${one.value} where ${describeCondition(one.when)}`,
    })),
  ];
  if (limit.movedBy.length > 0) lines.push({ label: "moved by", text: limit.movedBy.join("; ") });
  return { title: `${name}: ${limit.value}`, tone: "plain", lines };
}

function sourceLines(file: RuleFile): readonly DocumentLine[] {
  return file.sources.map((source) => {
    const by = sources[source.id]?.by;
    return { label: "source", text: `${by === undefined ? "" : `${by}, `}${nameSource(source)}` };
  });
}

/** A rule explained: what must hold, why, its limits and sources, and what it says of a build when one is given. */
export function explainRule(file: RuleFile, report?: Report): ReportDocument {
  const verdict = report?.verdicts.find((one) => one.rule === file.id);
  const statement: DocumentLine[] = [
    { label: "requires", text: describeCondition(file.requires) },
    { label: "when", text: file.when === undefined ? "always" : describeCondition(file.when) },
    ...(file.confirm === undefined ? [] : confirmLines(file.confirm)),
    { label: "why", text: named(file.because, file) },
    { label: "otherwise", text: named(file.otherwise.do, file) },
    { label: "weight", text: `${file.otherwise.weight}: ${weights[file.otherwise.weight]}` },
    { label: "work", text: works[file.otherwise.work] },
    ...(file.caution === undefined ? [] : [{ label: "caution", text: file.caution, tone: "bad" as const }]),
    ...(file.disputed === undefined ? [] : [{ label: "disputed", text: file.disputed }]),
    ...sourceLines(file),
  ];
  const sections: DocumentSection[] = [
    { heading: "Rule", items: [{ title: file.title, id: file.id, tone: "plain", lines: statement }] },
  ];
  const limits = Object.entries(file.limits ?? {});
  if (limits.length > 0) sections.push({ heading: "Limits", items: limits.map(limitItem) });
  if (report !== undefined && verdict !== undefined) {
    sections.push({ heading: `On ${report.build.name}`, items: [describeFinding(verdict, "full", report)] });
  }
  return { title: file.title, lead: [], sections, closing: [...statisticsNote(report), DISCLAIMER] };
}
