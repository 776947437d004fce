/** Upper end of each range of nominal sizes [mm]; a range includes its upper end. */
const SIZES = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315] as const;

/** Width of the tolerance zone [µm] by grade, a value for each range of sizes. */
const WIDTHS = {
  5: [4, 5, 6, 8, 9, 11, 13, 15, 18, 20, 23],
  6: [6, 8, 9, 11, 13, 16, 19, 22, 25, 29, 32],
  7: [10, 12, 15, 18, 21, 25, 30, 35, 40, 46, 52],
  8: [14, 18, 22, 27, 33, 39, 46, 54, 63, 72, 81],
  9: [25, 30, 36, 43, 52, 62, 74, 87, 100, 115, 130],
  10: [40, 48, 58, 70, 84, 100, 120, 140, 160, 185, 210],
  11: [60, 75, 90, 110, 130, 160, 190, 220, 250, 290, 320],
  12: [100, 120, 150, 180, 210, 250, 300, 350, 400, 460, 520],
  13: [140, 180, 220, 270, 330, 390, 460, 540, 630, 720, 810],
  14: [250, 300, 360, 430, 520, 620, 740, 870, 1000, 1150, 1300],
} as const;

/** A standard tolerance grade of ISO 286-1, IT5 to IT14. */
export type ToleranceGrade = keyof typeof WIDTHS;

/**
 * Width of the tolerance zone of a grade [m].
 * @param size nominal size [m], above 0 and up to 315 mm
 * @returns undefined for a size outside the table
 *
 * Source: ISO 286-1, table of standard tolerance grades; grades 5 to 9 from 30 to 120 mm held to published values.
 */
export function toleranceWidth(grade: ToleranceGrade, size: number): number | undefined {
  const range = SIZES.findIndex((end) => size * 1000 <= end * (1 + 1e-12));
  return size > 0 && range >= 0 ? WIDTHS[grade][range]! * 1e-6 : undefined;
}
