import type { DimensionValue } from "../../read/FieldValue.ts";

/** A reading that is hardly what was meant, and what it looks like. */
export interface DoubtfulReading {
  readonly looksLike: string;
}

/** Half widths of the predicted band beyond which a reading is doubted. */
const WIDTHS = 15;
/** Part of the predicted size within which it never is: bands of careful drawings are narrow. */
const SHARE = 0.002;
/** The same where the prediction has no band. */
const SHARE_ALONE = 3;
/** How near a reading must come to a slip for it to be named. */
const NEAR = 0.03;

const slips: readonly (readonly [factor: number, looksLike: string])[] = [
  [10, "ten times the prediction: a decimal point one place off"],
  [0.1, "a tenth of the prediction: a decimal point one place off"],
  [100, "a hundred times the prediction"],
  [0.01, "a hundredth of the prediction"],
  [1000, "a thousand times the prediction: another unit"],
  [0.001, "a thousandth of the prediction: another unit"],
  [25.4, "25.4 times the prediction: millimetres written as inches"],
  [1 / 25.4, "the prediction over 25.4: inches written as millimetres"],
  [2, "twice the prediction: a diameter for a radius"],
  [0.5, "half of the prediction: a radius for a diameter"],
  [-1, "the prediction with the other sign"],
];

/**
 * Whether a reading is far from what the build predicts, in comparison with the tolerances.
 * @param reading SI
 * @returns undefined for one that can be
 */
export function doubtReading(
  reading: number,
  { low, nominal, high }: DimensionValue,
): DoubtfulReading | undefined {
  const off = Math.abs(reading - nominal);
  const half = Math.max(high - nominal, nominal - low);
  const size = Math.abs(nominal);
  const room = half === 0 ? SHARE_ALONE * size : Math.max(WIDTHS * half, SHARE * size);
  if (off <= room || nominal === 0) return undefined;
  const slip = slips.find(([factor]) => Math.abs(reading / (nominal * factor) - 1) < NEAR);
  return { looksLike: slip?.[1] ?? "far outside of what the tolerances allow" };
}
