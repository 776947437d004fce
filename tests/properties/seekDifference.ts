import { type CompiledRule, type Derivation, quantities } from "trialfit";
import type { Leaf } from "../../packages/core/src/judge/CompiledRule.ts";
import type { Lookup } from "../../packages/core/src/judge/decide.ts";
import { type Engine, numericLeaves } from "./directedEngines.ts";
import type { Values } from "./randomBuilds.ts";

type Derivations = ReadonlyMap<string, Derivation>;

/** Places in a band that are tried, as shares of it. */
const PLACES = [0, 0.25, 0.5, 0.75, 1];
const SWEEPS = 3;

const numberAt = (lookup: Lookup, fact: string): number | undefined => {
  const found = lookup(fact);
  return found.kind === "band" ? found.nominal : undefined;
};

/** The left side of a comparison less its right side, where that is no fixed number. */
function differenceAt(leaf: Leaf, lookup: Lookup): number {
  const right =
    leaf.value.kind === "fact" && !leaf.value.fact.startsWith("limit.") ? leaf.value.fact : undefined;
  const left = numberAt(lookup, leaf.fact);
  const other = right === undefined ? 0 : numberAt(lookup, right);
  return left === undefined || other === undefined ? Number.NaN : left - other;
}

/** Dimensions with a tolerance that a comparison rests on, those first that do the most. */
function pathsOf(leaf: Leaf, values: Values, derivations: Derivations): readonly string[] {
  const facts = leaf.value.kind === "fact" ? [leaf.fact, leaf.value.fact] : [leaf.fact];
  const paths = facts.flatMap((fact) => {
    const derivation = derivations.get(fact);
    if (derivation?.state === "value") return derivation.spread.map(({ path }) => path);
    return quantities.has(fact) ? [] : [fact];
  });
  return [...new Set(paths)].filter((path) => {
    const value = values.get(path);
    return value?.kind === "dimension" && value.low < value.high;
  });
}

/**
 * Looks on from given engines, one dimension at a time, for engines in which the rule compares ever greater or ever
 * smaller numbers. For an open rule of which no engine was found to differ: a value can turn round inside of a
 * tolerance, where no corner shows it.
 * @param at facts of an engine
 * @param from engines to begin from
 * @yields every engine that went beyond the one before
 */
export function* seekDifference(
  rule: CompiledRule,
  values: Values,
  derivations: Derivations,
  at: (engine: Engine) => Lookup,
  from: readonly Engine[],
): Generator<Engine> {
  for (const leaf of numericLeaves(rule)) {
    const paths = pathsOf(leaf, values, derivations);
    for (const sign of [1, -1]) {
      const signedAt = (engine: Engine) => sign * differenceAt(leaf, at(engine));
      const ranked = from.map((engine) => ({ engine, value: signedAt(engine) }));
      let best = ranked.reduce((a, b) => (b.value > a.value ? b : a));
      for (let sweep = 0; sweep < SWEEPS; sweep += 1)
        for (const path of paths) {
          const value = values.get(path);
          if (value?.kind !== "dimension") continue;
          for (const place of PLACES) {
            const engine = new Map(best.engine).set(path, value.low + place * (value.high - value.low));
            const found = signedAt(engine);
            if (found <= best.value || Number.isNaN(found)) continue;
            best = { engine, value: found };
            yield engine;
          }
        }
    }
  }
}
