import { type CompiledRule, pathsOf, type Quantity } from "trialfit";
import { quantityList, rules } from "./catalog.ts";

/** Rules that read or print this fact. */
export function rulesUsing(fact: string): readonly CompiledRule[] {
  return rules.filter((rule) => rule.facts.includes(fact));
}

/** Quantities that are computed from this field or quantity. */
export function quantitiesFrom(name: string): readonly Quantity[] {
  return quantityList.filter((quantity) => pathsOf(quantity).includes(name));
}

/** Rules nearest to this one: those that read the same facts first, then those about the same parts. */
export function neighboursOf(rule: CompiledRule, most = 6): readonly CompiledRule[] {
  const near = (other: CompiledRule) => {
    const facts = other.facts.filter((fact) => rule.facts.includes(fact)).length;
    const parts = other.file.parts.filter((part) => rule.file.parts.includes(part)).length;
    return 3 * facts + parts;
  };
  return rules
    .filter((other) => other !== rule && near(other) > 0)
    .sort((a, b) => near(b) - near(a) || (a.file.id < b.file.id ? -1 : 1))
    .slice(0, most);
}
