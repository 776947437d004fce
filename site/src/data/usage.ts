import { type CompiledRule, pathsOf, type Quantity, quantities } from "trialfit";
import { quantityList, rules } from "./catalog.ts";

/** Rules that read or print this fact. */
export function rulesUsing(fact: string): readonly CompiledRule[] {
  return rules.filter((rule) => rule.facts.includes(fact));
}

/** Quantities that are computed from this field or quantity. */
export function quantitiesFrom(name: string): readonly Quantity[] {
  return quantityList.filter((quantity) => pathsOf(quantity).includes(name));
}

/** Every field and quantity that this one rests on, by whichever way, and itself. */
function below(name: string, found = new Set<string>()): ReadonlySet<string> {
  if (found.has(name)) return found;
  found.add(name);
  const quantity = quantities.get(name);
  if (quantity !== undefined) for (const path of pathsOf(quantity)) below(path, found);
  return found;
}

const resting = new Map<string, CompiledRule[]>();
for (const rule of rules)
  for (const name of new Set(rule.facts.flatMap((fact) => [...below(fact)])))
    resting.set(name, [...(resting.get(name) ?? []), rule]);

/** Rules that rest on this field or quantity, directly or through others. */
export function rulesRestingOn(name: string): readonly CompiledRule[] {
  return resting.get(name) ?? [];
}
