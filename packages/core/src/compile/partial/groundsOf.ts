import { deriveAll } from "../../derive/deriveAll.ts";
import { quantities } from "../../derive/generated/quantities.ts";
import { placesOf } from "../../derive/places.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import type { Lookup } from "../../judge/decide.ts";
import { lookupOf } from "../../judge/lookupOf.ts";
import { whereJudged } from "../../judge/whereJudged.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import { conditionFacts } from "../conditionFacts.ts";

/**
 * What a rule is judged on where dimensions were measured one by one: the facts of each place, or of the engine as a
 * whole for a rule that does not rest on them in this build.
 * @param values fields of the build, defaults filled in
 */
export function groundsOf(rule: CompiledRule, values: ReadonlyMap<string, FieldValue>): readonly Lookup[] {
  const wanted = [...conditionFacts(rule)].filter((fact) => quantities.has(fact));
  const { whole, placed } = whereJudged(values, [rule], quantities);
  const kind = placed[0]?.kind;
  const grounds = kind === undefined ? [whole] : placesOf(kind, values).map((place) => place.values);
  return grounds.map((ground) => lookupOf(ground, deriveAll(ground, quantities, wanted)));
}
