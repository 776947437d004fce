import { strengthAt } from "@trialfit/mechanics";
import { type Strength, type StrengthId, type StrengthKind, strengths } from "../tables/strengths.ts";

const ICE_POINT = 273.15;
const COLD = 20 + ICE_POINT;

/** What the quantities that use it say of the table. */
export const hotShareValid =
  "within the temperatures of the table; values of the table from memory, aluminium for about 100 hours at its temperature";

/**
 * What is left of a strength at a temperature, as a share of that at 20 °C.
 * @param words word of a choice → alloy of the table
 * @param word as the build gives it
 * @param temperature of the part [K]
 * @throws RangeError when the temperature lies outside of the alloy's table, or the word names none
 */
export function hotShare(
  words: Readonly<Record<string, StrengthId>>,
  word: string,
  kind: StrengthKind,
  temperature: number,
): number {
  const id = words[word];
  if (id === undefined)
    throw new RangeError(`alloy: found ${word}, expected one of ${Object.keys(words).join(", ")}`);
  const { temperatures, ...lists }: Strength = strengths[id];
  const curve = { temperatures: temperatures.map((one) => one + ICE_POINT), strengths: lists[kind] };
  return strengthAt(curve, temperature) / strengthAt(curve, COLD);
}
