import { notCovered } from "@trialfit/rules";
import { countOf } from "../read/countOf.ts";
import { fieldLabel } from "../read/fieldCatalog.ts";
import { describeToConfirm, straySection } from "./describeConfirmations.ts";
import { exchangeSection } from "./describeExchanges.ts";
import { type Detail, describeFinding, describeUnknown } from "./describeFinding.ts";
import { departureSection, setLine } from "./describeSet.ts";
import { assumptionSection, heldSection, skippedSection } from "./describeSettled.ts";
import { type FindingGroup, findingGroups, groupFindings } from "./groupFindings.ts";
import { mostWanted } from "./mostWanted.ts";
import type { Report, ReportVerdict } from "./Report.ts";
import type { DocumentLine, DocumentSection, ReportDocument } from "./ReportDocument.ts";

/** What stands at the end of every report. */
export const DISCLAIMER =
  "These are checks of the numbers that were entered, not a promise. The part maker's instructions, local codes and qualified people come first; the person who measures and signs decides.";

/** A caution that stands already is pointed to, not repeated: what is read twice is soon not read at all. */
function withoutRepeatedCautions(sections: readonly DocumentSection[]): readonly DocumentSection[] {
  const first = new Map<string, string>();
  return sections.map((section) => ({
    ...section,
    items: section.items.map((item) => ({
      ...item,
      lines: item.lines.map((line) => {
        if (line.label !== "caution") return line;
        const seen = first.get(line.text);
        if (seen === undefined) first.set(line.text, item.title);
        return seen === undefined ? line : { ...line, text: `the same as above, at “${seen}”` };
      }),
    })),
  }));
}

const MOST_ASKED = 6;

function askFirst(verdicts: readonly ReportVerdict[]): string {
  const first = mostWanted(verdicts).slice(0, MOST_ASKED);
  return first.length === 0
    ? ""
    : `Ask for these first: ${first.map(({ path, rules }) => `${fieldLabel(path)} (${countOf(rules, "rule")})`).join("; ")}.`;
}

/** How engines were drawn, where they were. */
export function statisticsNote(report: Report | undefined): readonly string[] {
  return report?.statistics === undefined ? [] : [`Drawn engines: ${report.statistics.about}`];
}

function drawnLines({ statistics }: Report): readonly DocumentLine[] {
  if (statistics === undefined) return [];
  const { draws, seed } = statistics;
  return [{ text: `${draws} engines drawn within the tolerances, seed ${seed}: no verdict rests on them` }];
}

function findingSection(
  group: FindingGroup,
  verdicts: readonly ReportVerdict[],
  detail: Detail,
  report: Report,
): DocumentSection {
  const heading = `${findingGroups[group]} (${verdicts.length})`;
  if (group === "confirm")
    return {
      heading,
      intro:
        "No number tells these: somebody must look, and write down under `confirmations` by the rule's name what was seen, by whom, when and how. Until then they have not passed.",
      items: verdicts.map((one) => describeToConfirm(one, detail)),
    };
  return group === "unknown"
    ? {
        heading,
        intro: `${askFirst(verdicts)} A rule that could not be judged has not passed.`.trim(),
        items: verdicts.map(describeUnknown),
      }
    : {
        heading,
        items: verdicts.map(
          group === "contradiction" ? describeUnknown : (one) => describeFinding(one, detail, report),
        ),
      };
}

function headline(report: Report): DocumentLine {
  const { summary, pending } = report;
  const open = pending?.rules.length ?? 0;
  if (open > 0)
    return {
      text: `NOT YET KNOWN: ${countOf(open, "rule")} ${open === 1 ? "is still being worked out, and has" : "are still being worked out, and have"} not passed.`,
      tone: "bad",
    };
  const stops = report.verdicts.filter((one) => one.weight === "stop");
  const waiting = stops.filter((one) => one.toConfirm).length;
  if (summary.sound && waiting > 0)
    return {
      text: `SOUND as far as numbers tell: every stop rule that they decide holds over all tolerances. ${countOf(waiting, "stop rule")} that a person must look at ${waiting === 1 ? "has" : "have"} not passed yet.`,
      tone: "doubt",
    };
  if (summary.sound)
    return {
      text: "SOUND as far as it was checked: every stop rule that applies holds over all tolerances.",
      tone: "good",
    };
  const count = (word: string) => stops.filter((one) => one.verdict === word && !one.toConfirm).length;
  const parts = [
    [count("fails"), count("fails") === 1 ? "fails" : "fail"],
    [count("open"), "open"],
    [count("unknown"), "unknown"],
    [report.stage === "all" ? 0 : waiting, "to be confirmed"],
  ].filter(([number]) => number !== 0);
  return {
    text: `NOT SOUND: of the stop rules, ${parts.map(([number, word]) => `${number} ${word}`).join(", ")}.`,
    tone: "bad",
  };
}

/** Lays out a report in the order of what the builder must do. */
export function describeReport(report: Report, detail: Detail = "full"): ReportDocument {
  const { summary } = report;
  const groups = [...groupFindings(report)].filter(([, verdicts]) => verdicts.length > 0);
  const findings = groups.map(([group, verdicts]) => findingSection(group, verdicts, detail, report));
  const settled = detail === "brief" ? [] : [heldSection(report), skippedSection(report)];
  return {
    title: report.build.name,
    lead: [
      headline(report),
      {
        text: `${countOf(report.verdicts.length, "rule")}: ${summary.holds} hold, ${summary.fails} fail, ${summary.open} open, ${summary.unknown} unknown, ${summary.toConfirm} to be confirmed, ${summary.notApplicable} not applicable`,
      },
      ...drawnLines(report),
      ...setLine(report),
      {
        text: `trialfit ${report.trialfit}; stage: ${report.stage}; build ${report.build.hash.slice(0, 12)}`,
        tone: "faint",
      },
    ],
    sections: withoutRepeatedCautions([
      exchangeSection(report),
      ...findings,
      ...settled,
      departureSection(report),
      straySection(report),
      assumptionSection(report),
    ]).filter((section) => section.items.length > 0),
    closing: [
      ...statisticsNote(report),
      `Not checked here: ${notCovered}. Check them by hand before assembly.`,
      DISCLAIMER,
    ],
  };
}
