import { readSheet } from "./readSheet.ts";
import { type TakenSheet, takeRows } from "./takeRows.ts";

/**
 * Takes the readings of a filled sheet into a build file. Nothing that was measured is lost: a reading that differs
 * from one that is there needs a reason, and the one before is kept beside it. A reading that is hardly what was
 * meant is refused with what the build predicts. Rows that are refused leave the others as they are.
 * @param text the build file
 * @param sheet the filled sheet
 * @throws InputError when the build file or the sheet as a whole cannot be read
 */
export function takeReadings(text: string, file: string, sheet: string, sheetFile: string): TakenSheet {
  return takeRows(text, file, readSheet(sheet, sheetFile), sheetFile);
}
