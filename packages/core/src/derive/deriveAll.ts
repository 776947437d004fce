import type { FieldValue } from "../read/FieldValue.ts";
import type { Derivation } from "./Derivation.ts";
import { Deriver } from "./Deriver.ts";
import type { Catalog, Overrides } from "./rootsOf.ts";
import { finish, type Steps } from "./Steps.ts";

export type { Overrides };

/**
 * Computes the wanted quantities of a build, each with its band.
 * @param values fields of the build, defaults filled in
 * @param wanted ids; what they rest on is computed as needed
 */
export function* deriveInSteps(
  values: ReadonlyMap<string, FieldValue>,
  catalog: Catalog,
  wanted: Iterable<string>,
  overrides?: Overrides,
): Steps<ReadonlyMap<string, Derivation>> {
  const deriver = new Deriver(values, catalog, overrides);
  for (const id of wanted) yield* deriver.derive(id);
  return deriver.results;
}

/** {@link deriveInSteps} at once. */
export function deriveAll(...wanted: Parameters<typeof deriveInSteps>): ReadonlyMap<string, Derivation> {
  return finish(deriveInSteps(...wanted));
}
