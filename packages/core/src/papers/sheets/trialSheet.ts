import { measuredFields } from "../measuredFields.ts";
import type { Cell, Paper, PaperSection, PaperStep } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { byPart, ownLabel, partLabel } from "../partsOf.ts";
import { readingStep } from "./gridOf.ts";
import {
  blank,
  isOfStage,
  limitCell,
  numberComparisons,
  readingUnit,
  relevant,
  roomCell,
  tableSection,
  valueCell,
} from "./pieces.ts";

/** How well a dimension must be measured for what is open to be settled. */
function neededUncertainty(source: PaperSource, path: string): Cell {
  const asked = source.report.verdicts.flatMap(({ settlement }) =>
    (settlement?.measure ?? []).filter((one) => one.path === path),
  );
  const finest = asked.reduce<(typeof asked)[number] | undefined>(
    (kept, one) => (kept === undefined || one.uncertainty < kept.uncertainty ? one : kept),
    undefined,
  );
  if (finest === undefined) return [];
  return [
    ". Settles what is open when measured to ± ",
    source.print.difference(`uncertainty ${path}`, finest.uncertainty, finest.unit),
  ];
}

function measuring(source: PaperSource, path: string): PaperStep {
  const predicted: Cell = source.values.has(path) ? source.print.field(path) : ["not stated"];
  const told: Cell = [
    "Predicted ",
    ...predicted,
    ". May lie ",
    ...roomCell(source, path),
    ...neededUncertainty(source, path),
    ".",
  ];
  const always: Cell = [
    blank("instrument"),
    blank("uncertainty", readingUnit(source, path)),
    blank("part at", "degC"),
    blank("joint"),
    blank("by, on"),
  ];
  return readingStep(source, path, { title: ownLabel(path), lines: [told] }, { single: [], always });
}

const partSection = (source: PaperSource, part: string, paths: readonly string[]): PaperSection => ({
  heading: partLabel(part),
  body: { kind: "steps", ordered: false, steps: paths.map((path) => measuring(source, path)) },
});

/** Clearances and gaps that the sizes give: measured directly, they tell whether the sizes are right. */
function crossChecks(source: PaperSource): readonly PaperSection[] {
  const rows = relevant(source)
    .filter((verdict) => isOfStage(source, verdict, "trial-assembly"))
    .flatMap((verdict) =>
      numberComparisons(verdict)
        .filter(
          ({ fact, unit }) => !fact.includes(".") && (unit === "mm" || unit === "cm3" || unit === "deg"),
        )
        .map((one) => ({ verdict, one })),
    );
  const byFact = new Map(rows.map((row) => [row.one.fact, row] as const));
  return tableSection({
    heading: "Cross-checks: measure what the sizes give",
    intro:
      "Found with clay, strip, feeler or dial indicator where a hand or an instrument can reach. A find outside the predicted band means that one of the sizes above is wrong.",
    columns: ["Clearance or gap", "Predicted", "Limit", "Found"],
    widths: [8, 5, 4, 3],
    rows: [...byFact.values()].map(({ verdict, one }) => [
      [one.label],
      valueCell(source, one),
      limitCell(source, verdict.rule, one),
      [blank("found", source.print.units(one.unit ?? "1")[0])],
    ]),
  });
}

/** Every dimension that the trial assembly must give, with a place for each reading. */
export function trialSheet(source: PaperSource): Paper | undefined {
  const paths = measuredFields(source);
  if (paths.length === 0) return undefined;
  return {
    id: "trial-sheet",
    title: "Trial-assembly measurement sheet",
    purpose:
      "Every size to measure on the trial assembly, with what is predicted and what it may be. A reading far from the prediction is taken again before it is written.",
    sections: [
      ...[...byPart(paths)].map(([part, own]) => partSection(source, part, own)),
      ...crossChecks(source),
    ],
    signatures: ["Measured by, and when", "Instruments checked against their masters by"],
  };
}
