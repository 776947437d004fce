import { toMeasure } from "../../report/describeOpen.ts";
import { nameFields } from "../../report/nameFields.ts";
import type { DocumentItem, DocumentLine } from "../../report/ReportDocument.ts";
import type { FindingRemedies, NoRemedy } from "./Remedy.ts";
import { plainlyWorse } from "./rankRemedies.ts";
import { remedyLine } from "./remedyLine.ts";
import { whyNotLines } from "./whyNotLines.ts";

const REASONS: readonly (readonly [NoRemedy["why"], string])[] = [
  ["breaks", "what would do breaks another rule"],
  ["too-loose", "tolerances are wider than the room for them"],
  ["unknown", "what would no longer fail is not known well enough"],
];

function whyUnachievable({ others }: FindingRemedies): string {
  const why = REASONS.filter(([reason]) => others.some((one) => one.why === reason)).map(([, text]) => text);
  return why.length === 0 ? "no dimension that can be changed reaches it" : why.join("; ");
}

function headline(finding: FindingRemedies): DocumentLine {
  const { state, remedies, compromises } = finding;
  const label = "change";
  switch (state) {
    case "measure":
      return { label, text: "none: it holds on paper and waits for a measurement", tone: "doubt" };
    case "achievable": {
      const worse = remedies.filter(({ worsens }) => plainlyWorse(worsens).length > 0).length;
      const all =
        remedies.length === 1 ? "achievable by this one" : `achievable by any of these ${remedies.length}`;
      const text =
        worse === 0
          ? all
          : `${all}, ${worse === remedies.length ? "but" : `but ${worse} of them`} at the cost of what does not hold already`;
      return { label, text, tone: worse === remedies.length ? "doubt" : "good" };
    }
    case "compromise":
      return {
        label,
        text: `none is clean: ${compromises.length === 1 ? "this one brings" : `each of these ${compromises.length} brings`} into question only what weighs less`,
        tone: "doubt",
      };
    case "unachievable":
      return { label, text: `unachievable by one dimension alone: ${whyUnachievable(finding)}`, tone: "bad" };
  }
}

function measureLines({ settlement, unmeasured }: FindingRemedies): readonly DocumentLine[] {
  if (unmeasured !== undefined) return [{ label: "measure", text: nameFields(unmeasured) }];
  if (settlement?.becomes !== "holds" || settlement.provided !== "as-expected") return [];
  const text = `cheaper than any change: ${toMeasure(settlement)}: then it surely holds, if what is measured comes out as expected`;
  return [{ label: "measure", text }];
}

/**
 * What stands beside the changes of a finding: whether there are any, what is cheaper, and, in `not`, what would do at
 * the cost of lighter rules and why others do not do.
 */
export interface FindingLines {
  readonly head: DocumentLine;
  readonly measure: readonly DocumentLine[];
  readonly not: readonly DocumentLine[];
}

export function findingLines(finding: FindingRemedies): FindingLines {
  return {
    head: headline(finding),
    measure: measureLines(finding),
    not: [...finding.compromises.map(remedyLine), ...whyNotLines(finding)],
  };
}

/** All that was found for one finding. */
export function describeFindingRemedies(finding: FindingRemedies): DocumentItem {
  const { rule, title, verdict, weight, remedies } = finding;
  const tone = verdict === "fails" ? "bad" : "doubt";
  const { head, measure, not } = findingLines(finding);
  return {
    title,
    id: rule,
    tone,
    lines: [
      { label: verdict, text: `weight: ${weight}`, tone },
      head,
      ...measure,
      ...remedies.map(remedyLine),
      ...not,
    ],
  };
}
