import type { DimensionValue } from "../read/FieldValue.ts";
import { fields } from "../read/fieldCatalog.ts";
import type { Quantity } from "./Quantity.ts";

/** Every quantity by id. */
export type Catalog = ReadonlyMap<string, Quantity>;

/** Values handed in from outside (examples of rules) in place of computed ones. */
export type Overrides = ReadonlyMap<string, DimensionValue>;

/** Everything that one quantity rests on, down to fields, each once. */
export function rootsOf(
  id: string,
  catalog: Catalog,
  overrides: Overrides,
  into = new Set<string>(),
): ReadonlySet<string> {
  if (overrides.has(id) || fields.has(id.replace(/\.place$/, ""))) return into.add(id);
  const quantity = catalog.get(id);
  if (quantity === undefined) throw new Error(`no field or quantity is called "${id}"`);
  for (const group of [quantity.inputs, quantity.choices, quantity.outlines]) {
    for (const path of Object.values(group)) rootsOf(path, catalog, overrides, into);
  }
  return into;
}
