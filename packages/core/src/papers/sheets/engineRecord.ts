import { verdictWords } from "../../judge/Verdict.ts";
import { parts } from "../../read/buildSchema.ts";
import type { Cell, Paper, PaperSection } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { givenFields, ownLabel } from "../partsOf.ts";
import { checkRow, numberComparisons, relevant, tableSection, words } from "./pieces.ts";

/** Where a value comes from, with the reading behind it. */
function origin(source: PaperSource, path: string): Cell {
  const value = source.values.get(path);
  if (value === undefined || value.kind === "text") return words(undefined);
  if (value.kind !== "dimension") return [value.provenance];
  const { provenance, instrument, note, taken } = value;
  const told = [
    provenance,
    instrument,
    taken?.by === undefined ? undefined : `by ${taken.by}`,
    taken?.on,
    taken?.temperature === undefined ? undefined : `at ${taken.temperature}`,
    taken?.joint,
    note,
    ...(taken?.replaces ?? []).map((old) => `instead of ${old.was} (${old.because})`),
  ];
  return [told.filter((word) => word !== undefined).join(", ")];
}

function sizes(source: PaperSource): PaperSection {
  const rows = parts.flatMap(({ spec }) => {
    return givenFields(source, spec.key).map((path, index) => [
      [index === 0 ? spec.label : "″"],
      [ownLabel(path)],
      source.print.field(path),
      origin(source, path),
    ]);
  });
  return {
    heading: "Sizes and choices, as built",
    body: { kind: "table", columns: ["Part", "What", "As built", "Comes from"], widths: [3, 7, 5, 5], rows },
  };
}

function checks(source: PaperSource): readonly PaperSection[] {
  const rows = relevant(source).flatMap((verdict) =>
    numberComparisons(verdict)
      .slice(0, 1)
      .map((first) => checkRow(source, verdict, first)),
  );
  return tableSection({
    heading: "Clearances, loads and margins as built",
    columns: ["Check", "Value", "Limit", "Stands"],
    widths: [9, 5, 4, 2],
    rows,
  });
}

function seen(source: PaperSource): readonly PaperSection[] {
  const rows = relevant(source)
    .filter(({ confirmed }) => confirmed !== undefined)
    .map(({ title, confirmed }) => [
      [title],
      [confirmed!.seen],
      [`${confirmed!.by}, ${confirmed!.on}`],
      [confirmed!.how],
    ]);
  if (rows.length === 0) return [];
  return [
    {
      heading: "Seen by a person",
      body: { kind: "table", columns: ["What", "Right", "By, on", "How"], rows },
    },
  ];
}

function assumed({ report }: PaperSource): readonly PaperSection[] {
  if (report.assumptions.length === 0) return [];
  return [
    {
      heading: "Assumed, not known",
      body: {
        kind: "table",
        columns: ["What", "Taken as", "Because"],
        rows: report.assumptions.map(({ path, text, because }) => [[ownLabel(path)], [text], [because]]),
      },
    },
  ];
}

function standing({ report }: PaperSource): PaperSection {
  const { summary, set } = report;
  const counts = [
    ["holds", summary.holds],
    ["fails", summary.fails],
    ["open", summary.open],
    ["unknown", summary.unknown],
    ["not-applicable", summary.notApplicable],
  ] as const;
  return {
    heading: "How it stands",
    ...(set === undefined
      ? {}
      : { intro: `Judged with the set ${set.title}; ${set.departures.length} departures from the catalog.` }),
    body: {
      kind: "table",
      columns: ["Verdict", "Rules", "Means"],
      rows: [
        ...counts.map(([word, count]) => [[word], [String(count)], [verdictWords[word]]]),
        [
          ["to be confirmed"],
          [String(summary.toConfirm)],
          ["nothing is missing but what a person must look at"],
        ],
      ],
    },
  };
}

/** What is inside the engine, and how each number is known. */
export function engineRecord(source: PaperSource): Paper {
  return {
    id: "engine-record",
    title: "Specification and record",
    purpose: "What is inside this engine, as built and as measured, with where every number comes from.",
    sections: [standing(source), sizes(source), ...checks(source), ...seen(source), ...assumed(source)],
    signatures: ["Built by", "Handed over to"],
  };
}
