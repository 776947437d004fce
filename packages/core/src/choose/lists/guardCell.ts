import { DimensionError } from "../../units/parseDimension.ts";
import { listLimits } from "./RawList.ts";

/**
 * Signs with which a spreadsheet begins a formula (OWASP, "CSV Injection": = + - @ tab, carriage return). A sign before
 * a number is one of a number.
 */
const FORMULA = /^(?:[=@\t\r]|[+-](?!\s*[\d.]))/;

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/;

/**
 * Refuses what no part has and a spreadsheet that opens the list again would run.
 * @throws DimensionError with what was found and what was expected
 */
export function guardCell(text: string): void {
  if (text.length > listLimits.cell)
    throw new DimensionError(`${text.length} characters`, `at most ${listLimits.cell} characters`);
  if (FORMULA.test(text))
    throw new DimensionError("a formula", "a value: no formula is worked out from a parts list");
  if (CONTROL.test(text)) throw new DimensionError("signs that cannot be printed", "plain text");
}
