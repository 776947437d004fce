import {
  confirmationPath,
  describeReport,
  mostWanted,
  quantities,
  type Report,
  type ReportVerdict,
} from "trialfit";
import { prettyUnits } from "../../data/prettyUnits.ts";
import type { ItemView, ReportView, SectionView } from "../protocol.ts";
import { countsOf } from "./countsOf.ts";
import { drawSpread } from "./drawSpread.tsx";
import { glanceOf } from "./glanceOf.ts";
import { viewDocument } from "./viewDocument.ts";

const MOST_WANTED = 12;

/** What spreads the value that a verdict leaves open. */
function spreadOf(verdict: ReportVerdict, report: Report): string | undefined {
  if (verdict.verdict !== "open") return undefined;
  const open = verdict.comparisons.find(({ state }) => state === "possible");
  const spread = report.quantities.find(({ id }) => id === open?.fact)?.spreadBy ?? [];
  return spread.length === 0 ? undefined : drawSpread(spread);
}

/** Quantities whose numbers a verdict rests on, each once. */
function numbersOf({ verdict, comparisons }: ReportVerdict): readonly string[] {
  const asked = verdict === "not-applicable" ? "when" : "requires";
  const names = comparisons
    .filter((one) => one.in === asked && typeof one.value === "object")
    .flatMap(({ fact, againstName = fact }) => [fact, againstName]);
  return [...new Set(names)].filter((name) => quantities.has(name));
}

function ofVerdict(item: ItemView, verdict: ReportVerdict, report: Report): ItemView {
  const needs = [...verdict.missing, ...verdict.settleBy];
  const spread = spreadOf(verdict, report);
  const glance = glanceOf(verdict);
  const numbers = numbersOf(verdict);
  return {
    ...item,
    // Findings are read one by one here: each has its caution in full.
    lines: item.lines.map((line) =>
      line.label === "caution" && verdict.caution !== undefined
        ? { ...line, text: prettyUnits(verdict.caution) }
        : line,
    ),
    word: verdict.verdict,
    weight: verdict.weight,
    work: verdict.work,
    parts: verdict.parts,
    ...(glance === undefined ? {} : { glance }),
    ...(verdict.confirm === undefined ? {} : { confirmation: confirmationPath(verdict.rule) }),
    ...(needs.length === 0 ? {} : { needs }),
    ...(numbers.length === 0 ? {} : { numbers }),
    ...(spread === undefined ? {} : { spread }),
  };
}

/** Rules without a verdict yet, with what they say at the nominal sizes where that is known. */
function pendingSection({ pending }: Report): readonly SectionView[] {
  if (pending === undefined || pending.rules.length === 0) return [];
  return [
    {
      heading: `Being worked out (${pending.rules.length})`,
      intro: "The tolerances of these are still being searched. None of them has passed.",
      items: pending.rules.map(({ rule, title, parts, weight, work, atNominal }) => ({
        title,
        id: rule,
        tone: "doubt",
        word: "pending",
        weight,
        work,
        parts,
        lines: [
          {
            text:
              atNominal === undefined
                ? "not known yet"
                : `if every part had its nominal size: ${atNominal.replaceAll("-", " ")}`,
            tone: "doubt",
          },
        ],
      })),
    },
  ];
}

/** A report as the page shows it; rules that are still being worked out stand in it without a verdict. */
export function viewReport(report: Report): ReportView {
  const byRule = new Map(report.verdicts.map((verdict) => [verdict.rule, verdict]));
  const { sections, ...document } = viewDocument(describeReport(report));
  return {
    ...document,
    sections: [
      ...pendingSection(report),
      ...sections.map((section) => ({
        ...section,
        items: section.items.map((item) => {
          const verdict = item.id === undefined ? undefined : byRule.get(item.id);
          return verdict === undefined ? item : ofVerdict(item, verdict, report);
        }),
      })),
    ],
    counts: countsOf(report.summary, report.pending),
    wanted: mostWanted(report.verdicts.filter(({ toConfirm }) => !toConfirm)).slice(0, MOST_WANTED),
  };
}
