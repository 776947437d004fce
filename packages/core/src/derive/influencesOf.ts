import { fields } from "../read/fieldCatalog.ts";
import { everyRoot } from "./everyRoot.ts";
import type { Catalog } from "./rootsOf.ts";

/** Fields whose readings give a field as well, when they are taken at several heights or in several directions. */
const formSources: ReadonlyMap<string, readonly string[]> = (() => {
  const sources = new Map<string, string[]>();
  for (const [path, { spec }] of fields)
    if (spec.kind === "dimension")
      for (const target of Object.values(spec.form ?? {}))
        sources.set(target, [...(sources.get(target) ?? []), path]);
  return sources;
})();

/** Adds a field, with what its default and its readings rest on. */
function addField(path: string, into: Set<string>): void {
  if (into.has(path)) return;
  into.add(path);
  const base = path.replace(/\.place$/, "");
  if (base !== path) into.add(base);
  const assumed = fields.get(base)?.spec.assumed;
  if (assumed !== undefined && "byChoice" in assumed) addField(assumed.byChoice, into);
  for (const other of assumed?.unless ?? []) addField(other, into);
  for (const source of formSources.get(path) ?? []) addField(source, into);
}

const found = new WeakMap<Catalog, Map<string, ReadonlySet<string>>>();

/**
 * Every field that a field or quantity may depend on, by whatever way to it: also those that decide its default or
 * give it by their readings. What is not among them has no say in its value, nor in which way is taken to it.
 * @throws Error when there is neither of that name
 */
export function influencesOf(catalog: Catalog, id: string): ReadonlySet<string> {
  const known = found.get(catalog) ?? new Map<string, ReadonlySet<string>>();
  found.set(catalog, known);
  let paths = known.get(id);
  if (paths === undefined) {
    const all = new Set<string>();
    for (const path of everyRoot(catalog, id)) addField(path, all);
    paths = all;
    known.set(id, paths);
  }
  return paths;
}
