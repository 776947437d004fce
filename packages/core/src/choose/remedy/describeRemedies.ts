import { toMeasure } from "../../report/describeOpen.ts";
import { DISCLAIMER } from "../../report/describeReport.ts";
import { nameFields } from "../../report/nameFields.ts";
import type { DocumentItem, DocumentLine, ReportDocument } from "../../report/ReportDocument.ts";
import { formatInterval } from "../../units/formatNumber.ts";
import type { Broken, FindingRemedies, NoRemedy, Remedy, RemedyReport, SizeChange } from "./Remedy.ts";
import { works } from "./works.ts";

/** `32.85 mm ± 0.02, 0.15 mm less than now`; what was measured place by place moves at each. */
function sizeText({ from, to, unit, text }: SizeChange): string {
  const by = `${formatInterval(Math.abs(to - from), unit)} ${to < from ? "less" : "more"}`;
  return text === undefined ? `${by} at each place where it was measured` : `${text}, ${by} than now`;
}

const brackets = (rules: readonly string[]): string => rules.map((rule) => `[${rule}]`).join(", ");

function remedyLine(remedy: Remedy): DocumentLine {
  const { label, path, work, oneStepLess, settles } = remedy;
  const also = settles.length === 0 ? "" : `; settles ${brackets(settles)} as well`;
  const less =
    oneStepLess.breaks.length > 0 ? `, with 1 step less ${brackets(oneStepLess.breaks)} would break` : "";
  return { label: work, text: `${label} [${path}]: ${sizeText(remedy)}${less}${also}`, tone: "good" };
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

function findingItem(finding: FindingRemedies): DocumentItem {
  const { rule, title, verdict, weight } = finding;
  return {
    title,
    id: rule,
    tone: verdict === "fails" ? "bad" : "doubt",
    lines: [
      { label: verdict, text: `weight: ${weight}`, tone: verdict === "fails" ? "bad" : "doubt" },
      headline(finding),
      ...measureLines(finding),
      ...finding.remedies.map(remedyLine),
      ...whyNot(finding),
    ],
  };
}

/** Lays out what `findRemedies` found: for each finding the changes that make it hold, and why others do not. */
export function describeRemedies({ build, findings, asked }: RemedyReport): ReportDocument {
  const by = (state: FindingRemedies["state"]) => findings.filter((one) => one.state === state).length;
  const lead: readonly DocumentLine[] =
    findings.length === 0
      ? [{ text: "Nothing to remedy: no rule that was asked for fails or is open.", tone: "good" }]
      : [
          {
            text: `${findings.length} ${findings.length === 1 ? "finding" : "findings"}: ${by("achievable")} can be made to hold by one change, ${by("unachievable")} cannot, ${by("measure")} to be measured.`,
          },
          {
            text: `By kind of work: ${Object.entries(works)
              .map(([kind, words]) => (kind === words ? kind : `${kind}, ${words}`))
              .join("; ")}.`,
            tone: "faint",
          },
          {
            text: "Each change stands for itself, all else as it is and kept as closely as before; after one is made, look again. With it the finding holds over all tolerances, nothing that holds stops holding, and nothing begins to fail.",
          },
        ];
  return {
    title: build,
    lead: [...lead, ...asked.map(({ rule, verdict }) => ({ text: `[${rule}]: ${verdict}` }))],
    sections:
      findings.length === 0
        ? []
        : [{ heading: `Remedies (${findings.length})`, items: findings.map(findingItem) }],
    closing: [
      "What is machined, ground, shimmed or tightened otherwise is for the part’s maker and a qualified machinist to allow; measure it again afterwards.",
      DISCLAIMER,
    ],
  };
}
