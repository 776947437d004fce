import type { RuleFile } from "@trialfit/rules";
import { factType } from "../judge/factCatalog.ts";
import { templateNames } from "../judge/templateNames.ts";
import type { Comparison } from "../judge/Verdict.ts";
import { describeComparison } from "./describeComparison.ts";
import { describeFinding } from "./describeFinding.ts";
import { DISCLAIMER } from "./describeReport.ts";
import type { ReportVerdict } from "./Report.ts";
import type { DocumentItem, DocumentLine, ReportDocument, Tone } from "./ReportDocument.ts";

const STATES: Readonly<Record<Comparison["state"], readonly [text: string, tone: Tone]>> = {
  sure: ["surely true", "good"],
  possible: ["possibly true: somewhere in the band", "doubt"],
  no: ["surely not true", "bad"],
  missing: ["cannot be said: a value is missing", "doubt"],
};

function traceItem(comparison: Comparison): DocumentItem {
  const [text, tone] = STATES[comparison.state];
  const place: DocumentLine = {
    label: comparison.in,
    text: comparison.alternative ? "one of several ways" : "needed",
  };
  return {
    title: describeComparison(comparison).text,
    id: comparison.fact,
    tone,
    lines: [place, { label: "state", text, tone }],
  };
}

/** Names in the remedy that this build gives no value for: the sentences with them are left out. */
function unfilled(file: RuleFile, remedy: string): readonly DocumentLine[] {
  const sentences = file.otherwise.do.split(/(?<=[.!?]) +(?=[A-Z{])/).length;
  const filled = remedy === "" ? 0 : remedy.split(/(?<=[.!?]) +(?=[A-Z])/).length;
  if (filled >= sentences) return [];
  const names = templateNames(file.otherwise.do).map((name) => factType(name)?.label ?? name);
  return [
    {
      label: "left out",
      text: `a sentence whose number is missing; it prints ${[...new Set(names)].join(", ")}`,
    },
  ];
}

/** One rule on one build, for its author: the verdict, every comparison with how sure it is, and the remedy as filled in. */
export function describeTrial(
  file: RuleFile,
  build: string,
  verdict: ReportVerdict,
  remedy: string,
): ReportDocument {
  const { remedy: _, ...bare } = verdict;
  const advice: DocumentItem = {
    title: verdict.verdict === "holds" ? "What it would say if it failed" : "What it says",
    tone: "plain",
    lines: [
      { label: "do", text: remedy === "" ? "nothing: every sentence has a number that is missing" : remedy },
      ...unfilled(file, remedy),
    ],
  };
  return {
    title: `${file.title}: ${verdict.verdict}`,
    lead: [{ text: `on ${build}` }],
    sections: [
      { heading: "Verdict", items: [describeFinding(bare)] },
      { heading: "Trace", items: verdict.comparisons.map(traceItem) },
      { heading: "Remedy", items: [advice] },
    ],
    closing: [DISCLAIMER],
  };
}
