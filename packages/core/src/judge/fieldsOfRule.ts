import { quantities } from "../derive/generated/quantities.ts";
import type { Quantity } from "../derive/Quantity.ts";
import type { CompiledRule } from "./CompiledRule.ts";
import { decidingFacts } from "./decidingFacts.ts";

/** By which ways to a value its fields are gathered: the surest one alone, or every one. */
export type Ways = "surest" | "every";

function pathsBy(quantity: Quantity, ways: Ways): readonly string[] {
  const [surest, ...others] = quantity.routes;
  const own = new Set(surest?.needs);
  const left = new Set(ways === "every" ? [] : others.flatMap(({ needs }) => needs));
  return [quantity.inputs, quantity.choices, quantity.tables]
    .flatMap((group) => Object.entries(group))
    .filter(([name]) => own.has(name) || !left.has(name))
    .map(([, path]) => path);
}

const found: Readonly<Record<Ways, Map<string, ReadonlySet<string>>>> = {
  surest: new Map(),
  every: new Map(),
};

/** Fields of the build file under a fact, each once: itself for a field, what it is computed from for a quantity. */
export function fieldsUnder(fact: string, ways: Ways): ReadonlySet<string> {
  const known = found[ways].get(fact);
  if (known !== undefined) return known;
  const quantity = quantities.get(fact);
  const fields: ReadonlySet<string> =
    quantity === undefined
      ? new Set([fact.replace(/\.place$/, "")])
      : new Set(pathsBy(quantity, ways).flatMap((path) => [...fieldsUnder(path, ways)]));
  found[ways].set(fact, fields);
  return fields;
}

/** Fields on which a rule's verdict rests. */
export function fieldsOfRule(rule: CompiledRule, ways: Ways): ReadonlySet<string> {
  return new Set([...decidingFacts(rule)].flatMap((fact) => [...fieldsUnder(fact, ways)]));
}
