import type { SheetRow } from "trialfit/papers";
import type { Circumstances } from "../../state/Circumstances.ts";

/** Keypads of some countries have a comma and no point; one between figures is a decimal sign. */
export const decimal = (text: string): string => text.trim().replace(/^([-+]?\d*),(\d+)$/, "$1.$2");

/** A row of the measurement sheet as a person would have filled it in. */
export function filledRow(
  row: SheetRow,
  reading: string,
  { by, on, temperature, joint, tools }: Circumstances,
  because: string,
): SheetRow {
  const tool = tools[row.unit];
  return {
    ...row,
    reading: decimal(reading),
    instrument: tool?.instrument.trim() ?? "",
    uncertainty: decimal(tool?.uncertainty ?? ""),
    "part temperature": decimal(temperature),
    joint: joint.trim(),
    by: by.trim(),
    on,
    "correction because": because.trim(),
  };
}

/** A reading of a build file as its box shows it: the number alone where it is in the unit of the column. */
export function shownReading(reading: string | undefined, unit: string): string {
  const [, number = "", rest = ""] = /^(\S+)\s*(.*)$/.exec(reading ?? "") ?? [];
  if (unit === "1" || rest === "") return reading ?? "";
  if (rest === unit) return number;
  return rest.startsWith(`${unit} `) ? `${number} ${rest.slice(unit.length + 1)}` : reading!;
}
