import { pathsOf } from "../../derive/groupsOf.ts";
import type { Catalog } from "../../derive/rootsOf.ts";
import { fields } from "../../read/fieldCatalog.ts";

/** Fields whose readings give a field as well, when they are taken at several heights or in several directions. */
const formSources: ReadonlyMap<string, readonly string[]> = (() => {
  const sources = new Map<string, string[]>();
  for (const [path, { spec }] of fields)
    if (spec.kind === "dimension")
      for (const target of Object.values(spec.form ?? {}))
        sources.set(target, [...(sources.get(target) ?? []), path]);
  return sources;
})();

/** Fields that say how many cylinders, crankpins and main bearings there are, and which belongs to which. */
export const countingFields: readonly string[] = [
  "block.layout",
  "block.cylinders",
  "block.mainBearings",
  "crankshaft.rodsPerPin",
  "crankshaft.throws",
];

/** A field, with what its default and its readings rest on. */
function reachOfField(path: string, into: Set<string>): void {
  if (into.has(path)) return;
  into.add(path);
  const base = path.replace(/\.place$/, "");
  if (base !== path) into.add(base);
  const assumed = fields.get(base)?.spec.assumed;
  if (assumed !== undefined && "byChoice" in assumed) reachOfField(assumed.byChoice, into);
  for (const other of assumed?.unless ?? []) into.add(other);
  for (const source of formSources.get(path) ?? []) reachOfField(source, into);
}

/**
 * Every field that a fact may rest on, by whatever way to it, defaults included. What is not among them has no say in
 * its value, nor in which way is taken to it.
 */
export class FactReach {
  private readonly found = new Map<string, ReadonlySet<string>>();
  private readonly catalog: Catalog;

  constructor(catalog: Catalog) {
    this.catalog = catalog;
  }

  of(id: string): ReadonlySet<string> {
    let reach = this.found.get(id);
    if (reach === undefined) {
      reach = this.find(id);
      this.found.set(id, reach);
    }
    return reach;
  }

  private find(id: string): ReadonlySet<string> {
    const reach = new Set<string>();
    const quantity = this.catalog.get(id);
    if (quantity === undefined) reachOfField(id, reach);
    else for (const path of pathsOf(quantity)) for (const one of this.of(path)) reach.add(one);
    return reach;
  }
}
