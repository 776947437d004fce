import { Chain } from "../derive/Chain.ts";
import { unmoved } from "../derive/Moved.ts";
import type { Catalog } from "../derive/rootsOf.ts";
import type { Steps } from "../derive/Steps.ts";
import { unlessImpossible } from "../derive/unlessImpossible.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { Cause } from "./BuildChange.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** Nominal values of those quantities that these values give. */
function* nominals(
  values: Values,
  catalog: Catalog,
  wanted: readonly string[],
): Steps<ReadonlyMap<string, number>> {
  const chain = new Chain(values, catalog);
  const found = new Map<string, number>();
  for (const id of wanted) {
    yield;
    if (chain.finder.lacking(id).length > 0) continue;
    const value = unlessImpossible(() => chain.at(id, unmoved));
    if (value !== undefined) found.set(id, value);
  }
  return found;
}

/**
 * What each changed value does to each quantity on its own: the value is put into the old build alone, and the
 * quantity computed anew at nominal values. Effects of several changes together may differ from their sum.
 * @param rests which of the quantities rest on a path
 */
export function* findCauses(
  before: Values,
  after: Values,
  paths: readonly string[],
  catalog: Catalog,
  rests: (path: string) => readonly string[],
): Steps<ReadonlyMap<string, readonly Cause[]>> {
  const wanted = [...new Set(paths.flatMap(rests))];
  const base = yield* nominals(before, catalog, wanted);
  const causes = new Map<string, Cause[]>(wanted.map((id) => [id, []]));
  for (const path of paths) {
    const values = new Map(before);
    const value = after.get(path);
    if (value === undefined) values.delete(path);
    else values.set(path, value);
    const ids = rests(path);
    for (const [id, now] of yield* nominals(values, catalog, ids)) {
      const change = now - (base.get(id) ?? Number.NaN);
      if (Math.abs(change) > 1e-9 * Math.abs(now)) causes.get(id)!.push({ path, change });
    }
  }
  for (const list of causes.values())
    list.sort((a, b) => Math.abs(b.change) - Math.abs(a.change) || (a.path < b.path ? -1 : 1));
  return causes;
}
