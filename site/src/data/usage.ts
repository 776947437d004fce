import { type CompiledRule, fieldsUnder, pathsOf, type Quantity } from "trialfit";
import { quantityList, rules } from "./catalog.ts";

/** Rules that read or print this fact. */
export function rulesUsing(fact: string): readonly CompiledRule[] {
  return rules.filter((rule) => rule.facts.includes(fact));
}

/** Quantities that are computed from this field or quantity. */
export function quantitiesFrom(name: string): readonly Quantity[] {
  return quantityList.filter((quantity) => pathsOf(quantity).includes(name));
}

const resting = new Map<string, CompiledRule[]>();
for (const rule of rules)
  for (const path of new Set(rule.facts.flatMap((fact) => [...fieldsUnder(fact, "every")])))
    resting.set(path, [...(resting.get(path) ?? []), rule]);

/** Rules that rest on this field, directly or through quantities. */
export function rulesRestingOn(path: string): readonly CompiledRule[] {
  return resting.get(path) ?? [];
}
