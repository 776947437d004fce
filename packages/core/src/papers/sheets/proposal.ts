import { quantities } from "../../derive/generated/quantities.ts";
import { fields } from "../../read/fieldCatalog.ts";
import type { ReportVerdict } from "../../report/Report.ts";
import type { Paper, PaperSection } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { boughtParts, byPart, givenFields, ownLabel, partKeyOf } from "../partsOf.ts";
import { limitCell, namedFields, numberComparisons, relevant, rulesOn, valueCell, words } from "./pieces.ts";

/** Sizes of a part that are named to a customer; the rest stands in the specification sheet. */
const NAMED = 6;
/** Comparisons nearest to their limits that are shown. */
const NEAREST = 12;

function targets(source: PaperSource): PaperSection {
  const paths = [...fields.values()]
    .filter(
      ({ path, spec }) => spec.kind !== "table" && spec.kind !== "text" && source.build.values.has(path),
    )
    .map(({ path }) => path)
    .filter((path) => !path.includes(".") || ["targets", "fuel", "driveline"].includes(partKeyOf(path)));
  return {
    heading: "What is wanted",
    body: {
      kind: "table",
      columns: ["Target", "Value"],
      rows: paths.map((path) => [[ownLabel(path)], source.print.field(path)]),
    },
  };
}

/** Quantities of the targets' system that the report carries: what the targets come to. */
function implied({ report, print }: PaperSource): PaperSection {
  const shown = report.quantities.filter(
    ({ id, state }) => state === "value" && quantities.get(id)?.system === "targets",
  );
  return {
    heading: "What that comes to",
    intro:
      "Computed from the targets and the parts. A power at the wheels and a power at the crank are not the same number.",
    body: {
      kind: "table",
      columns: ["Quantity", "Value (lowest to highest)"],
      rows: shown.map(({ id, name, low, nominal, high }) => [
        [name],
        print.quantity(id, { low: low!, nominal: nominal!, high: high! }),
      ]),
    },
  };
}

/** Fields of a part that most rules rest on come first. */
function combination(source: PaperSource): PaperSection {
  const rows = boughtParts.flatMap(({ key, label }) => {
    const paths = givenFields(source, key);
    const isWord = (path: string) => source.values.get(path)?.kind === "choice";
    const sizes = paths
      .filter((path) => !isWord(path))
      .map((path) => ({ path, rules: rulesOn(source, path) }));
    const named = [
      ...paths.filter(isWord),
      ...sizes.sort((a, b) => b.rules - a.rules).map(({ path }) => path),
    ];
    return named.length === 0 ? [] : [[[label], namedFields(source, named.slice(0, NAMED))]];
  });
  return {
    heading: "Combination",
    body: { kind: "table", columns: ["Part", "Main sizes"], widths: [4, 16], rows },
  };
}

/** Distance to the limit as a share of the limit, at worst. */
function margins(verdicts: readonly ReportVerdict[]) {
  return verdicts
    .filter(({ verdict }) => verdict === "holds")
    .flatMap((verdict) =>
      numberComparisons(verdict).flatMap((one) => {
        const limit = typeof one.against === "object" && "nominal" in one.against ? one.against.nominal : 0;
        return limit === 0 || one.alternative
          ? []
          : [{ verdict, one, share: one.margin!.low / Math.abs(limit) }];
      }),
    )
    .sort((a, b) => a.share - b.share);
}

function cost(source: PaperSource): PaperSection {
  const rows = margins(relevant(source))
    .slice(0, NEAREST)
    .map(({ verdict, one }) => [
      [verdict.title],
      valueCell(source, one),
      limitCell(source, verdict.rule, one),
      words(verdict.because),
    ]);
  return {
    heading: "What it costs in life",
    intro: "The checks that hold with least to spare: what wears, tires or must be renewed first.",
    body: {
      kind: "table",
      columns: ["Check", "Value", "Limit", "Why it is there"],
      widths: [5, 4, 3, 8],
      rows,
    },
  };
}

/** How long it runs: entries of the build about hours, runs and service. */
function life(source: PaperSource): readonly PaperSection[] {
  const rows = byPart([...source.build.values.keys()].filter((path) => partKeyOf(path) === "running"));
  const paths = [...rows.values()].flat().filter((path) => fields.has(path));
  if (paths.length === 0) return [];
  return [
    {
      heading: "Service",
      body: {
        kind: "table",
        columns: ["Point", "Value"],
        rows: paths.map((path) => [[ownLabel(path)], source.print.field(path)]),
      },
    },
  ];
}

function doubts(source: PaperSource): readonly PaperSection[] {
  const open = relevant(source).filter(
    ({ verdict, weight, toConfirm }) => weight === "stop" && !toConfirm && verdict !== "holds",
  );
  if (open.length === 0) return [];
  return [
    {
      heading: "Not settled: nothing is promised of these",
      body: {
        kind: "table",
        columns: ["Check", "Stands", "What it asks"],
        widths: [6, 2, 12],
        rows: open.map(({ title, verdict, remedy, missing }) => [
          [title],
          [verdict],
          words(remedy ?? (missing.length > 0 ? `needs ${missing.join(", ")}` : undefined)),
        ]),
      },
    },
  ];
}

/** What the shop proposes to the customer. */
export function proposal(source: PaperSource): Paper {
  return {
    id: "proposal",
    title: "Proposal",
    purpose:
      "What the customer wants, what is proposed for it, and what it will cost in life. Signed before parts are ordered.",
    sections: [
      targets(source),
      implied(source),
      combination(source),
      ...doubts(source),
      cost(source),
      ...life(source),
    ],
    signatures: ["Customer: this is what I want", "Shop: this is what we propose"],
  };
}
