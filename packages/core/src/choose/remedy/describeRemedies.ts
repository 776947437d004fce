import { countOf } from "../../read/countOf.ts";
import { DISCLAIMER } from "../../report/describeReport.ts";
import type { DocumentLine, ReportDocument } from "../../report/ReportDocument.ts";
import { brackets } from "./brokenText.ts";
import { describeFindingRemedies } from "./describeFindingRemedies.ts";
import type { Contradiction, FindingRemedies, RemedyReport } from "./Remedy.ts";
import { works } from "./works.ts";

/** What every change promises, and what it takes for granted. */
export const REMEDY_TERMS =
  "Each change stands for itself, all else as it is and kept as closely as before; after one is made, look again. With it the finding holds over all tolerances, nothing that holds stops holding, and nothing begins to fail, unless the line says so.";

/** Who must allow a change that is work on a part. */
export const REMEDY_CAUTION =
  "What is machined, ground, shimmed or tightened otherwise is for the part’s maker and a qualified machinist to allow; measure it again afterwards.";

const contradictionLine = ({ label, path, larger, smaller }: Contradiction): DocumentLine => ({
  text: `Contradiction: ${label} [${path}] is wanted larger for ${brackets(larger)}, smaller for ${brackets(smaller)}.`,
  tone: "doubt",
});

function unsettledLines(count: number): readonly DocumentLine[] {
  if (count === 0) return [];
  const rules = countOf(count, "rule is unknown or waits", "rules are unknown or wait");
  return [{ text: `${rules} for a person: that is no pass, and no change is sought.`, tone: "doubt" }];
}

/** Lays out what `findRemedies` found: for each finding the changes that make it hold, and why others do not. */
export function describeRemedies({
  build,
  findings,
  contradictions,
  asked,
  unsettled,
}: RemedyReport): ReportDocument {
  const by = (state: FindingRemedies["state"]) => findings.filter((one) => one.state === state).length;
  const compromises = by("compromise");
  const lead: readonly DocumentLine[] =
    findings.length === 0
      ? [{ text: "Nothing to remedy: no rule that was asked for fails or is open.", tone: "good" }]
      : [
          {
            text: `${findings.length} ${findings.length === 1 ? "finding" : "findings"}: ${by("achievable")} can be made to hold by one change${compromises === 0 ? "" : `, ${compromises} only at the cost of lighter rules`}, ${by("unachievable")} cannot, ${by("measure")} to be measured.`,
          },
          {
            text: `By kind of work, the cheapest first: ${Object.entries(works)
              .map(([kind, words]) => (kind === words ? kind : `${kind}, ${words}`))
              .join("; ")}.`,
            tone: "faint",
          },
          { text: REMEDY_TERMS },
          ...contradictions.map(contradictionLine),
        ];
  return {
    title: build,
    lead: [
      ...lead,
      ...unsettledLines(unsettled),
      ...asked.map(({ rule, verdict }) => ({ text: `[${rule}]: ${verdict}` })),
    ],
    sections:
      findings.length === 0
        ? []
        : [{ heading: `Remedies (${findings.length})`, items: findings.map(describeFindingRemedies) }],
    closing: [REMEDY_CAUTION, DISCLAIMER],
  };
}
