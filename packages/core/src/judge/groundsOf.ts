import { deriveAll } from "../derive/deriveAll.ts";
import { placesOf } from "../derive/places.ts";
import type { Catalog } from "../derive/rootsOf.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { CompiledRule } from "./CompiledRule.ts";
import type { Lookup } from "./decide.ts";
import { decidingFacts } from "./decidingFacts.ts";
import { lookupOf } from "./lookupOf.ts";
import { whereJudged } from "./whereJudged.ts";

/**
 * What a rule is judged on where dimensions were measured one by one: the facts of each place, or of the engine as a
 * whole for a rule that does not rest on them in this build.
 * @param values fields of the build, defaults filled in
 */
export function groundsOf(
  rule: CompiledRule,
  values: ReadonlyMap<string, FieldValue>,
  catalog: Catalog,
): readonly Lookup[] {
  const wanted = [...decidingFacts(rule)].filter((fact) => catalog.has(fact));
  const { whole, placed } = whereJudged(values, [rule], catalog);
  const kind = placed[0]?.kind;
  const grounds = kind === undefined ? [whole] : placesOf(kind, values).map((place) => place.values);
  return grounds.map((ground) => lookupOf(ground, deriveAll(ground, catalog, wanted)));
}
