import { stringify } from "csv-stringify/browser/esm/sync";
import { fields } from "../../read/fieldCatalog.ts";
import { intervalFromSi } from "../../units/convert.ts";
import { unitOf } from "../../units/findUnit.ts";
import { formatNumber } from "../../units/formatNumber.ts";
import { roundInwards } from "../findRoom.ts";
import { measuredFields } from "../measuredFields.ts";
import type { PaperSource } from "../PaperSource.ts";
import { ownLabel, partKeyOf, partLabel } from "../partsOf.ts";
import { unitOfField } from "../sheets/pieces.ts";
import { type Slot, slotsOf } from "../slotsOf.ts";
import { signWord } from "./Printer.ts";

/** Columns of the measurement sheet as a table file, in their order. What is filled in stands after `unit`. */
export const sheetColumns = [
  "entry",
  "part",
  "dimension",
  "position",
  "height",
  "direction",
  "predicted",
  "lowest",
  "highest",
  "unit",
  "reading",
  "instrument",
  "uncertainty",
  "part temperature",
  "joint",
  "by",
  "on",
  "correction because",
] as const;
export type SheetColumn = (typeof sheetColumns)[number];
export type SheetRow = Readonly<Record<SheetColumn, string>>;

const number = (text: string) => text.replace(/ .*$/, "");

function predictionOf(source: PaperSource, path: string, unit: string) {
  const value = source.values.get(path);
  if (value?.kind !== "dimension") return { predicted: "", lowest: "", highest: "" };
  const { low, high } = source.room(path);
  const scale = Math.abs(intervalFromSi(1, unitOf(value.unit)) / intervalFromSi(1, unitOf(unit)));
  const decimals = Math.max(0, Math.ceil(source.print.fineness(value) + Math.log10(scale) - 1e-9));
  const print = (si: number) =>
    `${number(formatNumber(signWord(path, si) === "" ? si : Math.abs(si), unit, { decimals }))}${signWord(path, si)}`;
  return {
    predicted: print(value.nominal),
    lowest: low === undefined ? "" : print(roundInwards(low.value, unit, decimals, -1)),
    highest: high === undefined ? "" : print(roundInwards(high.value, unit, decimals, 1)),
  };
}

function rowOf(source: PaperSource, slot: Slot): SheetRow {
  const { path, position = "", height = "", direction = "" } = slot;
  const unit = source.print.units(unitOfField(source, path))[0]!;
  return {
    entry: path,
    part: partLabel(partKeyOf(path)),
    dimension: ownLabel(path),
    position,
    height,
    direction,
    ...predictionOf(source, path, unit),
    unit: fields.get(path)?.spec.kind === "dimension" ? unit : "",
    reading: "",
    instrument: "",
    uncertainty: "",
    "part temperature": "",
    joint: "",
    by: "",
    on: "",
    "correction because": "",
  };
}

/** The measurement sheet as rows: one for each reading. */
export function sheetRows(source: PaperSource): readonly SheetRow[] {
  return measuredFields(source).flatMap((path) =>
    slotsOf(path, source.values).map((slot) => rowOf(source, slot)),
  );
}

/** Rows as a table file (RFC 4180). Text that a spreadsheet would take for a formula is kept from being one. */
export function sheetText(rows: readonly SheetRow[]): string {
  return stringify([...rows], { header: true, columns: [...sheetColumns], escape_formulas: true });
}
