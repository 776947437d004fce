import { finite, positive, requireAll, requireThat } from "../check/requireAll.ts";

/** Strength of a material by temperature, as a table gives it. */
export interface StrengthCurve {
  /** [K], rising, at least two */
  readonly temperatures: readonly number[];
  /** strengths at these temperatures [Pa], > 0, as many as temperatures */
  readonly strengths: readonly number[];
}

/**
 * Strength of a material at a temperature, straight from point to point of its table: it never leaves the values
 * of the two points about it. Beyond the table nothing is guessed.
 * @param curve the table
 * @param temperature of the part [K], from the table's first to its last
 * @returns strength [Pa]
 * @throws RangeError when the temperature is outside of the table, or the table is not one
 *
 * Source: definition.
 */
export function strengthAt({ temperatures, strengths }: StrengthCurve, temperature: number): number {
  requireThat(temperatures.length >= 2, "temperatures", temperatures.length, "at least two points");
  requireThat(
    strengths.length === temperatures.length,
    "strengths",
    strengths.length,
    `one for each of the ${temperatures.length} temperatures`,
  );
  for (const [index, one] of temperatures.entries()) {
    requireAll(finite, { temperatures: one });
    const before = temperatures[index - 1] ?? Number.NEGATIVE_INFINITY;
    requireThat(one > before, "temperatures", one, `rising values, above ${before}`);
  }
  for (const one of strengths) requireAll(positive, { strengths: one });
  const [first, last] = [temperatures[0]!, temperatures.at(-1)!];
  requireAll({ atLeast: first, atMost: last }, { temperature });
  const above = Math.max(
    1,
    temperatures.findIndex((one) => one >= temperature),
  );
  const [from, to] = [temperatures[above - 1]!, temperatures[above]!];
  const share = (temperature - from) / (to - from);
  return strengths[above - 1]! * (1 - share) + strengths[above]! * share;
}
