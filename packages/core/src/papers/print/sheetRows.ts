import { stringify } from "csv-stringify/browser/esm/sync";
import { fields } from "../../read/fieldCatalog.ts";
import { roundInwards } from "../findRoom.ts";
import { measuredFields } from "../measuredFields.ts";
import type { PaperSource } from "../PaperSource.ts";
import { ownLabel, partKeyOf, partLabel } from "../partsOf.ts";
import { readingUnit } from "../sheets/pieces.ts";
import { type Slot, slotsOf } from "../slotsOf.ts";
import { decimalsIn } from "./Printer.ts";

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

function predictionOf(source: PaperSource, path: string, unit: string) {
  const value = source.values.get(path);
  if (value?.kind !== "dimension") return { predicted: "", lowest: "", highest: "" };
  const { low, high } = source.room(path);
  const decimals = decimalsIn(value.unit, unit, source.print.fineness(value));
  const print = (si: number) => source.print.sizeText(path, si, unit, decimals);
  return {
    predicted: print(value.nominal),
    lowest: low === undefined ? "" : print(roundInwards(low.value, unit, decimals, -1)),
    highest: high === undefined ? "" : print(roundInwards(high.value, unit, decimals, 1)),
  };
}

function rowOf(source: PaperSource, slot: Slot): SheetRow {
  const { path, position = "", height = "", direction = "" } = slot;
  const unit = readingUnit(source, path);
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
