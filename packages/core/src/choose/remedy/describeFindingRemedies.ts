import { toMeasure } from "../../report/describeOpen.ts";
import { nameFields } from "../../report/nameFields.ts";
import type { DocumentItem, DocumentLine } from "../../report/ReportDocument.ts";
import { formatInterval } from "../../units/formatNumber.ts";
import type { Broken, FindingRemedies, NoRemedy, Remedy, SizeChange } from "./Remedy.ts";

/** `0.15 mm less than now`; what was measured place by place moves at each. */
export function moveText({ from, to, unit, text }: SizeChange): string {
  const by = `${formatInterval(Math.abs(to - from), unit)} ${to < from ? "less" : "more"}`;
  return `${by} ${text === undefined ? "at each place where it was measured" : "than now"}`;
}

/** `32.85 mm ± 0.02, 0.15 mm less than now`. */
function sizeText(change: SizeChange): string {
  return change.text === undefined ? moveText(change) : `${change.text}, ${moveText(change)}`;
}

const brackets = (rules: readonly string[]): string => rules.map((rule) => `[${rule}]`).join(", ");

/** What one step less would break, and which other findings hold as well. */
export function besideTexts({ oneStepLess: { breaks }, settles }: Remedy): {
  readonly less?: string;
  readonly also?: string;
} {
  return {
    ...(breaks.length === 0 ? {} : { less: `with 1 step less ${brackets(breaks)} would break` }),
    ...(settles.length === 0 ? {} : { also: `settles ${brackets(settles)} as well` }),
  };
}

function remedyLine(remedy: Remedy): DocumentLine {
  const { label, path, work } = remedy;
  const { less, also } = besideTexts(remedy);
  const text = `${label} [${path}]: ${sizeText(remedy)}${less === undefined ? "" : `, ${less}`}${also === undefined ? "" : `; ${also}`}`;
  return { label: work, text, tone: "good" };
}

function becomes({ rule, becomes: word }: Broken): string {
  return `[${rule}] ${word === undefined ? "no longer holds" : word === "fails" ? "fails" : `is ${word}`}`;
}

/** Most rules or fields that are named; the data has them all. */
const NAMED = 3;

function breakLine({ label, path, nearest, breaks = [] }: NoRemedy): DocumentLine {
  const more = breaks.length > NAMED ? `, and ${breaks.length - NAMED} more` : "";
  const text = `${label} [${path}]: ${sizeText(nearest!)}, would do, but then ${breaks.slice(0, NAMED).map(becomes).join(", ")}${more}`;
  return { label: "not by", text };
}

/** Fields by name, the first of many. */
function someFields(paths: readonly string[]): string {
  const more = paths.length > NAMED ? `; and ${paths.length - NAMED} more` : "";
  return `${nameFields(paths.slice(0, NAMED))}${more}`;
}

function whyNot({ others, fixed }: FindingRemedies): readonly DocumentLine[] {
  const paths = (why: NoRemedy["why"]) => others.filter((one) => one.why === why).map(({ path }) => path);
  const line = (label: string, what: string, list: readonly string[]): readonly DocumentLine[] =>
    list.length === 0 ? [] : [{ label, text: `${what}: ${someFields(list)}`, tone: "faint" }];
  return [
    ...others.filter((one) => one.why === "breaks").map(breakLine),
    ...line(
      "too loose",
      "holds at the nominal values of some sizes, over the whole band at none",
      paths("too-loose"),
    ),
    ...line("no reach", "no size was found at which it holds", paths("out-of-reach")),
    ...line("fixed", "nobody can choose these, or they follow a word", fixed),
  ];
}

function headline({ state, remedies, others }: FindingRemedies): DocumentLine {
  switch (state) {
    case "measure":
      return { label: "change", text: "none: it holds on paper and waits for a measurement", tone: "doubt" };
    case "achievable": {
      const text =
        remedies.length === 1 ? "achievable by this one" : `achievable by any of these ${remedies.length}`;
      return { label: "change", text, tone: "good" };
    }
    case "unachievable": {
      const [breaks, loose] = (["breaks", "too-loose"] as const).map((why) =>
        others.some((one) => one.why === why),
      );
      const why = [
        ...(breaks ? ["what would do breaks another rule"] : []),
        ...(loose ? ["tolerances are wider than the room for them"] : []),
        ...(breaks || loose ? [] : ["no dimension that can be changed reaches it"]),
      ];
      const text = `unachievable by one dimension alone: ${why.join("; ")}`;
      return { label: "change", text, tone: "bad" };
    }
  }
}

function measureLines({ settlement, unmeasured }: FindingRemedies): readonly DocumentLine[] {
  if (unmeasured !== undefined) return [{ label: "measure", text: nameFields(unmeasured) }];
  if (settlement?.becomes !== "holds" || settlement.provided !== "as-expected") return [];
  const text = `cheaper than any change: ${toMeasure(settlement)}: then it surely holds, if what is measured comes out as expected`;
  return [{ label: "measure", text }];
}

/** What stands beside the changes of a finding: whether there are any, what is cheaper, and why others do not do. */
export interface FindingLines {
  readonly head: DocumentLine;
  readonly measure: readonly DocumentLine[];
  readonly not: readonly DocumentLine[];
}

export function findingLines(finding: FindingRemedies): FindingLines {
  return { head: headline(finding), measure: measureLines(finding), not: whyNot(finding) };
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
