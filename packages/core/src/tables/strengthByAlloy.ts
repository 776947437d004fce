import type { FieldDefault } from "../read/FieldSpec.ts";
import { type Strength, type StrengthId, type StrengthKind, strengths } from "./strengths.ts";

const round = (value: number): number => Math.round(value);

/**
 * The default of a strength at 20 °C that follows the alloy of its part.
 * @param byChoice path of the choice that names the alloy
 * @param words word of the choice → alloy of the table
 */
export function strengthByAlloy(
  byChoice: string,
  kind: StrengthKind,
  words: Readonly<Record<string, StrengthId>>,
): FieldDefault {
  return {
    byChoice,
    values: Object.fromEntries(
      Object.entries(words).map(([word, id]) => {
        const { name, spread, source, ...lists }: Strength = strengths[id];
        const cold = lists[kind][0]!;
        return [
          word,
          {
            value: `${round(cold)} MPa ± ${round(spread * cold)}`,
            because: `usual for ${name} at 20 °C (${source}, table of strengths)`,
          },
        ];
      }),
    ),
  };
}
