import { isEntry } from "../read/fieldCatalog.ts";
import { pathsOf } from "./groupsOf.ts";
import type { Catalog } from "./rootsOf.ts";

const found = new WeakMap<Catalog, Map<string, ReadonlySet<string>>>();

/**
 * Every field that a field or quantity may rest on, by whatever way to it: which way is taken depends on the build.
 * @throws Error when there is neither of that name
 */
export function everyRoot(catalog: Catalog, id: string): ReadonlySet<string> {
  let known = found.get(catalog);
  if (known === undefined) {
    known = new Map();
    found.set(catalog, known);
  }
  let roots = known.get(id);
  if (roots === undefined) {
    roots = find(catalog, id);
    known.set(id, roots);
  }
  return roots;
}

function find(catalog: Catalog, id: string): ReadonlySet<string> {
  if (isEntry(id)) return new Set([id]);
  const quantity = catalog.get(id);
  if (quantity === undefined) throw new Error(`no field or quantity is called "${id}"`);
  return new Set(pathsOf(quantity).flatMap((path) => [...everyRoot(catalog, path)]));
}
