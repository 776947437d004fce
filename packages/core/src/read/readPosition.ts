import type { Form } from "./FieldValue.ts";
import { asList, isGroup, type PositionReadings } from "./readingSchema.ts";

/** What the readings of one position come to, in SI. */
export interface PositionSize {
  readonly mean: number;
  readonly least: number;
  readonly most: number;
  readonly form: Form;
  /** Every reading as it was written. */
  readonly texts: readonly string[];
}

const mean = (numbers: readonly number[]) => numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
const apart = (numbers: readonly number[]) => Math.max(...numbers) - Math.min(...numbers);

/**
 * Size, taper and out-of-round from readings at one cylinder, crankpin or main bearing. Readings repeated at one
 * place are averaged first; the size is the mean over places; least and most are those of the places.
 * @param read turns one written reading into SI
 */
export function readPosition(readings: PositionReadings, read: (text: string) => number): PositionSize {
  const texts: string[] = [];
  const place = (written: Parameters<typeof asList>[0]): number => {
    const list = asList(written);
    texts.push(...list);
    return mean(list.map(read));
  };
  const heights: number[][] = (isGroup(readings) ? Object.values(readings) : [readings]).map((height) =>
    isGroup(height) ? Object.values(height).map(place) : [place(height)],
  );
  const all = heights.flat();
  const turned = heights.filter((height) => height.length > 1);
  return {
    mean: mean(heights.map(mean)),
    least: Math.min(...all),
    most: Math.max(...all),
    form: {
      ...(heights.length > 1 ? { taper: apart(heights.map(mean)) } : {}),
      ...(turned.length > 0 ? { outOfRound: Math.max(...turned.map(apart)) } : {}),
    },
    texts,
  };
}
