import { differingFields, wholeValues } from "../derive/places.ts";
import { type Catalog, type RootFinder, rootFinderOf } from "../derive/rootsOf.ts";
import type { PositionKind } from "../read/FieldSpec.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { CompiledRule } from "./CompiledRule.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** Which rules are judged on the engine as a whole, and which at each cylinder, crankpin or main bearing. */
export interface WhereJudged {
  /** The values of the engine as a whole. */
  readonly whole: Values;
  readonly common: readonly CompiledRule[];
  readonly placed: readonly { readonly kind: PositionKind; readonly rules: readonly CompiledRule[] }[];
  /** Whether a field or quantity differs from place to place. */
  readonly differs: (fact: string) => boolean;
}

/** Kinds of places, in the order in which they are judged. */
const kinds = ["cylinder", "crankpin", "main"] as const;

/** Which kind of place a rule must be judged at: one that its facts differ by. Cylinders come before their crankpins. */
function kindOf(rule: CompiledRule, finder: RootFinder, differing: ReadonlyMap<string, PositionKind>) {
  const found = new Set(
    rule.facts.flatMap((fact) => [...finder.rootsOf(fact)]).flatMap((path) => differing.get(path) ?? []),
  );
  return (["main", "cylinder", "crankpin"] as const).find((kind) => found.has(kind));
}

/**
 * Sorts rules by where they are judged: at each place whose dimensions they rest on, where these were measured one by
 * one, otherwise once.
 * @param values fields of the build, defaults filled in
 */
export function whereJudged(values: Values, rules: readonly CompiledRule[], catalog: Catalog): WhereJudged {
  const differing = differingFields(values);
  const finder = rootFinderOf(catalog, [...values.keys(), ...differing.keys()]);
  const kindBy = new Map(rules.map((rule) => [rule, kindOf(rule, finder, differing)] as const));
  const those = (kind: PositionKind | undefined) => rules.filter((rule) => kindBy.get(rule) === kind);
  return {
    whole: wholeValues(values),
    common: those(undefined),
    placed: kinds.map((kind) => ({ kind, rules: those(kind) })).filter((one) => one.rules.length > 0),
    differs: (fact) => [...finder.rootsOf(fact)].some((path) => differing.has(path)),
  };
}
