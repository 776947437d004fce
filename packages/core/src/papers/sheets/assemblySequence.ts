import { parts } from "../../read/buildSchema.ts";
import type { ReportVerdict } from "../../report/Report.ts";
import { finalGate } from "../gates.ts";
import type { Cell, Paper, PaperStep } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { type AssemblyStep, assemblySteps } from "../tables/assemblySteps.ts";
import {
  blank,
  cautionsOf,
  isOfStage,
  limitCell,
  numberComparisons,
  onceCautioned,
  onParts,
  relevant,
  sentencesOf,
  tick,
  valueCell,
} from "./pieces.ts";

const idOf = (key: string) => parts.find(({ spec }) => spec.key === key)?.spec.id ?? key;

/** Checks of the final day: rules of that stage. */
function checksOf(source: PaperSource): readonly ReportVerdict[] {
  return relevant(source).filter((verdict) => isOfStage(source, verdict, "final-assembly"));
}

function check(source: PaperSource, verdict: ReportVerdict): PaperStep {
  const { title, confirm, confirmed, weight, remedy } = verdict;
  const numbers = numberComparisons(verdict).map(
    (one): Cell => [
      `${one.label}: predicted `,
      ...valueCell(source, one),
      ", ",
      ...limitCell(source, verdict.rule, one),
      ". Found ",
      blank(one.label, source.print.units(one.unit ?? "1")[0]),
    ],
  );
  const seen: readonly Cell[] =
    confirm === undefined
      ? []
      : [
          [`${confirm.check} Not right: ${confirm.failure}`],
          confirmed === undefined
            ? [tick("seen"), " seen by ", blank("who"), blank("when")]
            : [`Seen: ${confirmed.seen}, ${confirmed.by}, ${confirmed.on}: ${confirmed.how}`],
        ];
  const otherwise = source.rules.get(verdict.rule)!.file.otherwise.do;
  return {
    title,
    hold: weight === "stop",
    cautions: cautionsOf([verdict]),
    lines: [...numbers, ...seen, [`If not: ${remedy ?? inWords(otherwise)}`]],
  };
}

/**
 * What to do in words: sentences with numbers of this build are left out, for they are those of sizes that hold, and
 * it is read when a size has come out otherwise.
 */
function inWords(text: string): string {
  const kept = sentencesOf(text).filter((sentence) => !sentence.includes("{"));
  return kept.length > 0 ? kept.join(" ") : text.replace(/\{([^}]+)\}/g, "…");
}

/** Of several steps that have a part of the rule, the last: by then all of its parts are there. */
function stepOf(verdict: ReportVerdict): number {
  const at = assemblySteps.map(({ parts: keys }) => keys.some((key) => verdict.parts.includes(idOf(key))));
  return at.lastIndexOf(true);
}

/** The crankshaft is turned by hand after a step: a step in torque tells what went wrong. */
const turns: PaperStep = {
  title: "Turns freely through two turns",
  hold: true,
  lines: [
    [
      "Torque to turn after this step ",
      blank("torque to turn", "N m"),
      blank("before it", "N m"),
      blank("by"),
    ],
  ],
};

/** The steps with their checks; checks of no part of a step come last. */
export function assemblySequence(source: PaperSource): Paper | undefined {
  const checks = checksOf(source);
  if (checks.length === 0) return undefined;
  const section = (step: AssemblyStep, index: number) => {
    const own = checks.filter((verdict) => stepOf(verdict) === index);
    if (own.length === 0 && !onParts(source, step.parts.map(idOf)).length) return [];
    const holdsFirst = [...own].sort((a, b) => Number(b.weight === "stop") - Number(a.weight === "stop"));
    return [
      {
        heading: `${index + 1}. ${step.title}`,
        intro: step.work,
        body: {
          kind: "steps" as const,
          ordered: false,
          steps: [
            ...onceCautioned(holdsFirst.map((verdict) => check(source, verdict))),
            ...(step.turned === true ? [turns] : []),
          ],
        },
      },
    ];
  };
  const rest = checks.filter((verdict) => stepOf(verdict) === -1);
  return {
    id: "assembly-sequence",
    title: "Assembly sequence",
    purpose:
      "The order of the final assembly, with the check after each step. At a HOLD nothing goes on until it is signed.",
    gate: finalGate(source, "assembly-sequence"),
    sections: [
      ...assemblySteps.flatMap(section),
      ...(rest.length === 0
        ? []
        : [
            {
              heading: `${assemblySteps.length + 1}. Before it is closed`,
              body: {
                kind: "steps" as const,
                ordered: false,
                steps: onceCautioned(rest.map((verdict) => check(source, verdict))),
              },
            },
          ]),
    ],
    signatures: ["Assembled by", "Hold points seen by"],
  };
}
