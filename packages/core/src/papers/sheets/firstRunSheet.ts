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

/** Moments of the first run, in their order: each takes the rules whose moment names it. */
const moments: readonly { readonly heading: string; readonly is: RegExp }[] = [
  { heading: "Before the engine is first turned", is: /^(before|at the|planned|just before)/i },
  { heading: "From the first firing on", is: /firing|idle|warm|heat|first hour|load/i },
  { heading: "Afterwards", is: /./ },
];

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

function step(source: PaperSource, verdict: ReturnType<typeof relevant>[number]): PaperStep {
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
  const own = relevant(source).filter(({ system }) => system === "first-run");
  if (own.length === 0) return undefined;
  const groups = new Map(moments.map(({ heading }) => [heading, [] as (typeof own)[number][]]));
  for (const verdict of own) {
    const moment = verdict.confirm?.moment ?? "";
    const { heading } = moments.find(({ is }) => is.test(moment)) ?? moments.at(-1)!;
    groups.get(heading)!.push(verdict);
  }
  return {
    id: "first-run-sheet",
    title: "First-run sheet",
    purpose:
      "What is seen before the first start, read during it and done after it. Any reading outside its limit stops the engine.",
    sections: [
      ...[...groups]
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
