import type { Comparison } from "../../judge/Verdict.ts";
import type { Stage } from "../../read/FieldSpec.ts";
import { fields } from "../../read/fieldCatalog.ts";
import { operatorWords } from "../../report/describeComparison.ts";
import type { ReportVerdict } from "../../report/Report.ts";
import { roundInwards } from "../findRoom.ts";
import type {
  BlankPiece,
  Cell,
  Gate,
  PaperSection,
  PaperStep,
  PaperTable,
  Piece,
  TickPiece,
} from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { ownLabel } from "../partsOf.ts";
import { placeOf, type Slot } from "../slotsOf.ts";

export const blank = (label: string, unit?: string, wide?: boolean): BlankPiece => ({
  kind: "blank",
  label,
  ...(unit === undefined || unit === "1" ? {} : { unit }),
  ...(wide === true ? { wide } : {}),
});

export const tick = (label: string): TickPiece => ({ kind: "tick", label });

/** Text as a cell; nothing stands as a dash, so that no cell looks forgotten. */
export const words = (text: string | undefined): Cell => [text === undefined || text === "" ? "–" : text];

/** Pieces one after another, with something between them. */
export function joined(cells: readonly Cell[], between: string): Cell {
  return cells.flatMap((cell, index): Piece[] => (index === 0 ? [...cell] : [between, ...cell]));
}

/** The unit in which a dimension is written in a build, or else its usual one. */
function unitOfField({ values }: PaperSource, path: string): string {
  const value = values.get(path);
  const spec = fields.get(path)?.spec;
  if (value?.kind === "dimension") return value.unit;
  return spec?.kind === "dimension" ? spec.unit : "1";
}

/** The unit in which a reading of a dimension is written down. */
export const readingUnit = (source: PaperSource, path: string): string =>
  source.print.units(unitOfField(source, path))[0]!;

/** A place to write the reading of a slot in. */
export function blankOf(source: PaperSource, slot: Slot): BlankPiece {
  const place = placeOf(slot);
  return blank(place === "" ? ownLabel(slot.path) : place, readingUnit(source, slot.path));
}

/** Dimensions and choices with their names, one after another. */
export const namedFields = (source: PaperSource, paths: readonly string[]): Cell =>
  joined(
    paths.map((path): Cell => [`${ownLabel(path)} `, ...source.print.field(path)]),
    "; ",
  );

/** How many rules rest on a field. */
export const rulesOn = (source: PaperSource, path: string): number =>
  [...source.rules.values()].filter((rule) => source.restsOn(rule, path)).length;

/** Between which sizes a dimension may come out for all that holds to hold, with the rules that say so. */
export function roomCell(source: PaperSource, path: string): Cell {
  const { low, high, rules } = source.room(path);
  const value = source.values.get(path);
  if (rules === 0 || value?.kind !== "dimension") return words(undefined);
  const { unit } = value;
  const decimals = source.print.fineness(value);
  const end = (size: number, way: -1 | 1) =>
    source.print.size(`room ${path}`, path, roundInwards(size, unit, decimals, way), unit, decimals);
  const title = (rule: string) => source.rules.get(rule)?.file.title ?? rule;
  return joined(
    [
      ...(low === undefined ? [] : [["from ", end(low.value, -1), ` (${title(low.rule)})`] as Cell]),
      ...(high === undefined ? [] : [["up to ", end(high.value, 1), ` (${title(high.rule)})`] as Cell]),
      ...(low === undefined && high === undefined ? [["no rule ends it near by"] as Cell] : []),
    ],
    "; ",
  );
}

/** What a comparison asks: `at least 0.90 mm`, from the report. */
export function limitCell({ print }: PaperSource, rule: string, one: Comparison): Cell {
  const { against, unit, operator, againstName } = one;
  const word = operatorWords[operator];
  if (against === undefined) return words(undefined);
  if (!("nominal" in against)) return [`${word} ${against.join(", ")}`.trim()];
  return [`${word} `, print.figure(`${rule} ${againstName ?? "limit"}`, against.nominal, unit ?? "1")];
}

/** The value that a comparison looked at. */
export function valueCell({ print }: PaperSource, one: Comparison): Cell {
  const { value, unit, decimals, fact } = one;
  if (value === undefined) return ["not known yet"];
  if (typeof value === "string") return [value];
  const style = [unit ?? "1", decimals ?? 3] as const;
  const [low, nominal, high] = [value.low, value.nominal, value.high].map((size) =>
    print.number(fact, size, ...style),
  );
  return low!.text === high!.text ? [nominal!] : [nominal!, " (", low!, " to ", high!, ")"];
}

/** What a rule requires of numbers: not its `when`, and not words. */
export function numberComparisons({ comparisons }: ReportVerdict): readonly Comparison[] {
  return comparisons.filter(
    (one) => one.in === "requires" && typeof one.value === "object" && one.margin !== undefined,
  );
}

/** One comparison of a rule as a row: what is held to what, and how it stands. */
export const checkRow = (source: PaperSource, verdict: ReportVerdict, one: Comparison): readonly Cell[] => [
  [verdict.title],
  valueCell(source, one),
  limitCell(source, verdict.rule, one),
  [verdict.verdict],
];

/** Every number that rules require, a row each. */
export const checkRows = (source: PaperSource, verdicts: readonly ReportVerdict[]) =>
  verdicts.flatMap((verdict) => numberComparisons(verdict).map((one) => checkRow(source, verdict, one)));

/** A table as a section, or none where it has no rows. */
export const tableSection = (
  section: Omit<PaperSection, "body"> & Pick<PaperTable, "columns" | "widths" | "rows">,
): readonly PaperSection[] => {
  const { columns, widths, rows, ...rest } = section;
  if (rows.length === 0) return [];
  const body: PaperTable = { kind: "table", columns, rows, ...(widths === undefined ? {} : { widths }) };
  return [{ ...rest, body }];
};

export const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.!?])\s+(?=[A-Z])/);

/** Cautions of rules: each sentence once, for what is read twice is soon not read at all. */
export function cautionsOf(verdicts: readonly ReportVerdict[]): readonly string[] {
  const read = new Set<string>();
  return verdicts.flatMap(({ caution = "" }) => {
    const sentences = sentencesOf(caution).filter((one) => one !== "" && !read.has(one));
    for (const one of sentences) read.add(one);
    return sentences.length === 0 ? [] : [sentences.join(" ")];
  });
}

/** Steps in which a caution that stands at one before is not read again. */
export function onceCautioned(steps: readonly PaperStep[]): readonly PaperStep[] {
  const read = new Set<string>();
  return steps.map((step) => {
    const fresh = (step.cautions ?? []).filter((text) => !read.has(text));
    for (const text of fresh) read.add(text);
    return { ...step, cautions: fresh };
  });
}

/** Verdicts that say something of this engine. */
export const relevant = ({ report }: PaperSource): readonly ReportVerdict[] =>
  report.verdicts.filter(({ verdict }) => verdict !== "not-applicable");

/** Whether a rule is looked at in one of some stages. */
export const isOfStage = (
  { rules }: PaperSource,
  { rule }: ReportVerdict,
  ...stages: readonly Stage[]
): boolean => rules.get(rule)?.file.stages.some((stage) => stages.includes(stage)) === true;

/** Rules on some parts, by their ids. */
export function onParts(
  source: PaperSource,
  ids: readonly string[],
  verdicts: readonly ReportVerdict[] = relevant(source),
): readonly ReportVerdict[] {
  return verdicts.filter(({ parts }) => parts.some((part) => ids.includes(part)));
}

/** What a gate says on paper. */
export function gateCell({ waitsFor, override }: Gate): Cell {
  if (waitsFor.length === 0) return ["RELEASED"];
  const waiting = waitsFor.join("; ");
  return override === undefined
    ? [`HELD. ${waiting}`]
    : [`RELEASED BY ${override.by}: ${override.because}. Still open: ${waiting}`];
}
