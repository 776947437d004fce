import { quantities } from "../derive/generated/quantities.ts";
import { rootFinderOf } from "../derive/rootsOf.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import type { FieldValue } from "../read/FieldValue.ts";

/** Tells whether a rule rests on a field, by the ways that a build takes. */
export function restsOnFields(
  values: ReadonlyMap<string, FieldValue>,
): (rule: CompiledRule, path: string) => boolean {
  const finder = rootFinderOf(quantities, values.keys());
  const known = new Map<CompiledRule, ReadonlySet<string>>();
  return (rule, path) => {
    let paths = known.get(rule);
    if (paths === undefined) {
      paths = new Set(rule.facts.flatMap((fact) => [...finder.rootsOf(fact)]));
      known.set(rule, paths);
    }
    return paths.has(path);
  };
}
