import type { Fact } from "../../judge/Fact.ts";
import { factType } from "../../judge/factCatalog.ts";
import type { NearestMissed } from "./SearchResult.ts";
import type { CandidateKind } from "./SearchSpace.ts";
import type { NearestMiss } from "./Tally.ts";

const bandOf = (fact: Fact | { readonly kind: "words" }) =>
  fact.kind === "band" ? { low: fact.low, nominal: fact.nominal, high: fact.high } : undefined;

/** A nearest miss in names and plain numbers. */
export function writeMiss(
  { chosen, relative, miss, isAim, left, right }: NearestMiss,
  kinds: readonly CandidateKind[],
): NearestMissed {
  const { fact, operator, value: against } = miss.leaf;
  const type = factType(fact);
  const [value, limit] = [bandOf(left), bandOf(right)];
  const greater = operator.startsWith("greater");
  return {
    parts: chosen.map(([kind, option]) => {
      const { part, candidates } = kinds[kind]!;
      return { part: part.key, id: candidates[option]!.id };
    }),
    ...(Number.isFinite(relative) ? { relative } : {}),
    fact,
    label: type?.label ?? fact,
    operator,
    ...(type?.kind === "number" ? { unit: type.unit } : {}),
    ...(type?.kind === "number" && type.decimals !== undefined ? { decimals: type.decimals } : {}),
    ...(value !== undefined ? { value } : left.kind === "word" ? { value: left.word } : {}),
    ...(limit !== undefined
      ? { against: limit }
      : against.kind === "words"
        ? { against: [...against.words] }
        : {}),
    ...(isAim && against.kind === "number" ? { wanted: against.text } : {}),
    ...(value === undefined || limit === undefined
      ? {}
      : { short: greater ? limit.low - value.high : value.low - limit.high }),
  };
}
