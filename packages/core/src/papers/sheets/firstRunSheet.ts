import { firstRunPhases } from "@trialfit/rules";
import type { ReportVerdict } from "../../report/Report.ts";
import type { Cell, Paper, PaperStep } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import {
  blank,
  cautionsOf,
  limitCell,
  numberComparisons,
  onceCautioned,
  relevant,
  tick,
  valueCell,
} from "./pieces.ts";

/** What is read off the gauges, with a column for each time. Common practice. */
const gauges: readonly (readonly [string, string])[] = [
  ["Oil pressure before the start, on the starter", "bar"],
  ["Oil pressure, cold idle", "bar"],
  ["Oil pressure, hot idle", "bar"],
  ["Oil pressure, hot, at bedding speed", "bar"],
  ["Oil temperature", "degC"],
  ["Water or head temperature", "degC"],
  ["Leaks: fuel, oil, water", "1"],
  ["Leak-down by cylinder, after bedding in", "%"],
];

function step(source: PaperSource, verdict: ReportVerdict): PaperStep {
  const numbers = numberComparisons(verdict).map(
    (one): Cell => [
      `${one.label}: `,
      ...valueCell(source, one),
      ", ",
      ...limitCell(source, verdict.rule, one),
    ],
  );
  const { confirm, title, weight } = verdict;
  const seen: readonly Cell[] =
    confirm === undefined
      ? []
      : [
          [confirm.check],
          [`When: ${confirm.moment} Not right: ${confirm.failure}`],
          [tick("done"), " done by ", blank("who"), blank("when")],
        ];
  return { title, hold: weight === "stop", cautions: cautionsOf([verdict]), lines: [...numbers, ...seen] };
}

/** The first run, with what stops it. */
export function firstRunSheet(source: PaperSource): Paper | undefined {
  const phaseOf = ({ rule }: ReportVerdict) => source.rules.get(rule)?.file.firstRun;
  const own = relevant(source).filter((verdict) => phaseOf(verdict) !== undefined);
  if (own.length === 0) return undefined;
  const groups = Object.entries(firstRunPhases).map(
    ([phase, heading]) => [heading, own.filter((verdict) => phaseOf(verdict) === phase)] as const,
  );
  return {
    id: "first-run-sheet",
    title: "First-run sheet",
    purpose:
      "What is seen before the first start, read during it and done after it. Any reading outside its limit stops the engine.",
    sections: [
      ...groups
        .filter(([, verdicts]) => verdicts.length > 0)
        .map(([heading, verdicts]) => ({
          heading,
          body: {
            kind: "steps" as const,
            ordered: true,
            steps: onceCautioned(verdicts.map((verdict) => step(source, verdict))),
          },
        })),
      {
        heading: "Readings",
        body: {
          kind: "table",
          columns: ["Reading", "At start", "Warm", "After the first heat", "After bedding in"],
          rows: gauges.map(([what, unit]) => [
            [what],
            ...["at start", "warm", "after the first heat", "after bedding in"].map(
              (time): Cell => [blank(`${what}, ${time}`, source.print.units(unit)[0])],
            ),
          ]),
        },
      },
    ],
    signatures: ["Run by, and when", "Stopped because"],
  };
}
