import type { DimensionValue } from "../read/FieldValue.ts";
import { isEntry } from "../read/fieldCatalog.ts";
import type { Quantity } from "./Quantity.ts";
import { routeOf, type TakenRoute } from "./routeOf.ts";

/** Every quantity by id. */
export type Catalog = ReadonlyMap<string, Quantity>;

/** Values handed in from outside (examples of rules) in place of computed ones. */
export type Overrides = ReadonlyMap<string, DimensionValue>;

/** What the quantities of one build rest on, down to fields, by the ways that its values allow. */
export class RootFinder {
  private readonly found = new Map<string, ReadonlySet<string>>();
  private readonly routes = new Map<string, TakenRoute>();
  private readonly ways = new Map<string, ReadonlySet<string>>();
  private readonly lacks = new Map<string, readonly string[]>();
  private readonly catalog: Catalog;
  private readonly given: (path: string) => boolean;
  private readonly overridden: (id: string) => boolean;

  /**
   * @param given whether the build has a value for a field
   * @param overridden whether a quantity's value is handed in from outside
   */
  constructor(catalog: Catalog, given: (path: string) => boolean, overridden: (id: string) => boolean) {
    this.catalog = catalog;
    this.given = given;
    this.overridden = overridden;
  }

  /** Every field under a field or quantity, each once. @throws Error when there is neither of that name. */
  rootsOf(id: string): ReadonlySet<string> {
    let roots = this.found.get(id);
    if (roots === undefined) {
      roots = this.find(id);
      this.found.set(id, roots);
    }
    return roots;
  }

  private find(id: string): ReadonlySet<string> {
    if (this.isRoot(id)) return new Set([id]);
    const { inputs, choices, tables } = this.routeOf(id);
    const paths = [inputs, choices, tables].flatMap((group) => Object.values(group));
    return new Set(paths.flatMap((path) => [...this.rootsOf(path)]));
  }

  /** The way by which a quantity is computed. */
  routeOf(id: string): TakenRoute {
    let route = this.routes.get(id);
    if (route === undefined) {
      const quantity = this.catalog.get(id);
      if (quantity === undefined) throw new Error(`no field or quantity is called "${id}"`);
      route = routeOf(quantity, (path) => this.lacking(path).length);
      this.routes.set(id, route);
    }
    return route;
  }

  /** The ways taken to a quantity and to what lies under it, where there is a choice: `deckClearance 1`. */
  waysTo(id: string): ReadonlySet<string> {
    let ways = this.ways.get(id);
    if (ways === undefined) {
      ways = this.isRoot(id) ? new Set() : this.findWays(id);
      this.ways.set(id, ways);
    }
    return ways;
  }

  private findWays(id: string): ReadonlySet<string> {
    const { index, inputs } = this.routeOf(id);
    const below = Object.values(inputs).flatMap((path) => [...this.waysTo(path)]);
    const own = (this.catalog.get(id)?.routes.length ?? 0) > 1 ? [`${id} ${index}`] : [];
    return new Set([...own, ...below]);
  }

  private isRoot(id: string): boolean {
    return this.overridden(id) || isEntry(id);
  }

  /** Fields under a field or quantity that the build does not give. */
  lacking(id: string): readonly string[] {
    let lacking = this.lacks.get(id);
    if (lacking === undefined) {
      lacking = [...this.rootsOf(id)].filter((path) => !this.given(path)).sort();
      this.lacks.set(id, lacking);
    }
    return lacking;
  }
}

/** As many of them as are kept for a catalog. */
const KEPT = 32;

const finders = new WeakMap<Catalog, Map<string, RootFinder>>();

/**
 * The finder for builds that give these fields, whatever their values: made once while it is in use.
 * @param given paths of the fields that the build has
 * @param overridden quantities whose values are handed in from outside; they count as given
 */
export function rootFinderOf(
  catalog: Catalog,
  given: Iterable<string>,
  overridden: Iterable<string> = [],
): RootFinder {
  const outside = new Set(overridden);
  const has = new Set([...given, ...outside]);
  const key = [[...has].join(" "), [...outside].join(" ")].join("|");
  let kept = finders.get(catalog);
  if (kept === undefined) {
    kept = new Map();
    finders.set(catalog, kept);
  }
  const finder =
    kept.get(key) ??
    new RootFinder(
      catalog,
      (path) => has.has(path),
      (id) => outside.has(id),
    );
  kept.delete(key);
  kept.set(key, finder);
  if (kept.size > KEPT) kept.delete(kept.keys().next().value!);
  return finder;
}
