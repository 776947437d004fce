import type { CompiledRule, Derivation } from "trialfit";
import { type Leaf, leavesOf } from "../../packages/core/src/judge/CompiledRule.ts";
import { isNumeric } from "../../packages/core/src/judge/compare.ts";
import type { Values } from "./randomBuilds.ts";

export type Engine = ReadonlyMap<string, number>;
type Derivations = ReadonlyMap<string, Derivation>;

/** What one dimension does to a difference at its low end and at its high end, against its nominal value. */
type Effects = ReadonlyMap<string, { readonly atLow: number; readonly atHigh: number }>;

/** Every comparison of numbers in a rule, those of the cases of its limits included. */
export function numericLeaves(rule: CompiledRule): readonly Leaf[] {
  const nodes = [
    rule.when,
    rule.requires,
    ...rule.limits.flatMap(({ cases }) => cases.map((one) => one.when)),
  ];
  return nodes.flatMap(leavesOf).filter((leaf) => isNumeric(leaf.operator));
}

function effectsOf(fact: string, values: Values, derivations: Derivations): Effects {
  const field = values.get(fact);
  if (field?.kind === "dimension" && !derivations.has(fact))
    return new Map([[fact, { atLow: field.low - field.nominal, atHigh: field.high - field.nominal }]]);
  const derivation = derivations.get(fact);
  if (derivation?.state !== "value") return new Map();
  const { nominal, spread } = derivation;
  return new Map(
    spread.map(({ path, atLow, atHigh }) => [path, { atLow: atLow - nominal, atHigh: atHigh - nominal }]),
  );
}

/** What dimensions do to the left side of a comparison less its right side. */
function leafEffects(leaf: Leaf, values: Values, derivations: Derivations): Effects {
  const effects = new Map(effectsOf(leaf.fact, values, derivations));
  if (leaf.value.kind === "fact")
    for (const [path, { atLow, atHigh }] of effectsOf(leaf.value.fact, values, derivations)) {
      const left = effects.get(path) ?? { atLow: 0, atHigh: 0 };
      effects.set(path, { atLow: left.atLow - atLow, atHigh: left.atHigh - atHigh });
    }
  return effects;
}

/** The engine in which every dimension stands where, alone, it moves the difference farthest up (1) or down (-1). */
function directed(effects: Effects, sign: 1 | -1, values: Values): Engine {
  const engine = new Map<string, number>();
  for (const [path, { atLow, atHigh }] of effects) {
    const value = values.get(path);
    if (value?.kind !== "dimension") continue;
    const [low, high] = [sign * atLow, sign * atHigh];
    engine.set(path, low <= 0 && high <= 0 ? value.nominal : high >= low ? value.high : value.low);
  }
  return engine;
}

/**
 * Engines at which a rule is most likely to change its mind: for each comparison, every dimension at the end that
 * raises or lowers what it compares, the others at their nominal values, or where they best meet or break the other
 * comparisons.
 */
export function* directedEngines(
  rule: CompiledRule,
  values: Values,
  derivations: Derivations,
): Generator<Engine> {
  const ends = numericLeaves(rule).map((leaf) => {
    const effects = leafEffects(leaf, values, derivations);
    const sign = leaf.operator.startsWith("greater") ? 1 : -1;
    return {
      met: directed(effects, sign, values),
      broken: directed(effects, sign === 1 ? -1 : 1, values),
    };
  });
  const joined = (engines: readonly Engine[]): Engine => new Map(engines.flatMap((engine) => [...engine]));
  const bases = [new Map(), joined(ends.map(({ met }) => met)), joined(ends.map(({ broken }) => broken))];
  for (const base of bases) {
    yield base;
    for (const { met, broken } of ends) for (const own of [met, broken]) yield joined([base, own]);
  }
}
