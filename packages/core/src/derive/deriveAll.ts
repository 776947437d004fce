import type { FieldValue, TableRow } from "../read/FieldValue.ts";
import { fieldLabel } from "../read/fieldCatalog.ts";
import { formatNumber } from "../units/formatNumber.ts";
import type { Derivation } from "./Derivation.ts";
import { describeContradiction } from "./describeContradiction.ts";
import { isAssumed } from "./isAssumed.ts";
import type { Quantity } from "./Quantity.ts";
import { type Catalog, type Overrides, RootFinder } from "./rootsOf.ts";
import { searchBand, type Tolerance } from "./searchBand.ts";

type Values = ReadonlyMap<string, FieldValue>;

export type { Overrides };

/** Fields moved off their nominal values, and what was worked out for them. */
interface Moved {
  readonly fields: ReadonlyMap<string, number>;
  readonly known: Map<string, number>;
}

const movedBy = (fields: Iterable<readonly [string, number]>): Moved => ({
  fields: new Map(fields),
  known: new Map(),
});

class Deriver {
  readonly results = new Map<string, Derivation>();
  /** Values by what they rest on, of quantities whose computation is a search of its own. */
  private readonly searched = new Map<string, number>();
  private readonly nominals = new Map<string, number>();
  private readonly finder: RootFinder;
  private readonly values: Values;
  private readonly catalog: Catalog;
  private readonly overrides: Overrides;

  constructor(values: Values, catalog: Catalog, overrides: Overrides) {
    this.values = values;
    this.catalog = catalog;
    this.overrides = overrides;
    this.finder = new RootFinder(
      catalog,
      (path) => this.value(path) !== undefined,
      (id) => overrides.has(id),
    );
  }

  private value(path: string): FieldValue | undefined {
    return this.overrides.get(path) ?? this.values.get(path);
  }

  /**
   * The value of a field or quantity with some fields moved; what does not rest on them is computed once.
   * @param moved fields by path, and every value worked out for these fields so far
   */
  private at(id: string, moved: Moved): number {
    const direct = moved.fields.get(id) ?? moved.known.get(id);
    if (direct !== undefined) return direct;
    const field = this.value(id);
    if (field?.kind === "dimension") return field.nominal;
    const touched = moved.fields.size > 0 && this.touches(id, moved.fields);
    if (!touched) {
      const known = this.nominals.get(id);
      if (known !== undefined) return known;
    }
    const quantity = this.catalog.get(id)!;
    const result =
      touched && quantity.shape === "guarded" ? this.search(quantity, moved) : this.compute(quantity, moved);
    (touched ? moved.known : this.nominals).set(id, result);
    return result;
  }

  private touches(id: string, moved: ReadonlyMap<string, number>): boolean {
    for (const root of this.finder.rootsOf(id)) if (moved.has(root)) return true;
    return false;
  }

  /** Computes a searching quantity once for each set of values that it rests on. */
  private search(quantity: Quantity, moved: Moved): number {
    const roots = this.finder.rootsOf(quantity.id);
    const key = JSON.stringify([quantity.id, [...moved.fields].filter(([path]) => roots.has(path))]);
    let result = this.searched.get(key);
    if (result === undefined) {
      result = this.compute(quantity, moved);
      this.searched.set(key, result);
    }
    return result;
  }

  private inputsOf(quantity: Quantity, moved: Moved): Record<string, number> {
    return Object.fromEntries(
      Object.entries(this.finder.routeOf(quantity.id).inputs).map(([name, path]) => [
        name,
        this.at(path, moved),
      ]),
    );
  }

  private compute(quantity: Quantity, moved: Moved): number {
    const route = this.finder.routeOf(quantity.id);
    const words: Record<string, string> = {};
    for (const [name, path] of Object.entries(route.choices)) {
      const value = this.value(path);
      if (value?.kind === "choice") words[name] = value.value;
    }
    const tables: Record<string, readonly TableRow[]> = {};
    for (const [name, path] of Object.entries(route.tables)) {
      const value = this.value(path);
      if (value?.kind === "table") tables[name] = value.rows;
    }
    const result = quantity.compute(this.inputsOf(quantity, moved), words, tables, route.index);
    if (!Number.isFinite(result))
      throw new RangeError(`${quantity.name.toLowerCase()} has no finite value for these inputs`);
    return result;
  }

  /** A direct input as text for people, with its name. */
  private shown(path: string): string | undefined {
    const value = this.value(path);
    if (value?.kind === "dimension") return `${fieldLabel(path)} ${value.text}`;
    const derived = this.results.get(path);
    const other = this.catalog.get(path);
    if (other === undefined || derived?.state !== "value") return undefined;
    return `${other.name} ${formatNumber(derived.nominal, other.unit, { decimals: other.decimals })}`;
  }

  /** What the ways taken down to the fields take for granted. */
  private takenFor(id: string): readonly string[] {
    if (!this.catalog.has(id) || this.overrides.has(id)) return [];
    const { inputs, assumes } = this.finder.routeOf(id);
    const below = Object.values(inputs).flatMap((path) => this.takenFor(path));
    return [...new Set(assumes === undefined ? below : [assumes, ...below])];
  }

  derive(id: string): Derivation {
    const known = this.results.get(id);
    if (known !== undefined) return known;
    const result = this.deriveNew(id);
    this.results.set(id, result);
    return result;
  }

  private deriveNew(id: string): Derivation {
    const quantity = this.catalog.get(id)!;
    const roots = [...this.finder.rootsOf(id)];
    const missing = this.finder.lacking(id);
    if (missing.length > 0) return { state: "missing", id, missing };
    const tolerances = (quantity.nominalOnly ? [] : roots).flatMap((path): Tolerance[] => {
      const value = this.value(path);
      return value?.kind === "dimension" && value.low < value.high ? [{ path, ...value }] : [];
    });
    try {
      const nominal = this.at(id, movedBy([]));
      const band = searchBand(
        (point) => this.at(id, movedBy(tolerances.map(({ path }, index) => [path, point[index]!]))),
        tolerances,
        nominal,
        quantity.shape === "guarded",
      );
      const assumed = roots.filter((path) => isAssumed(this.value(path))).sort();
      const inputs = this.inputsOf(quantity, movedBy([]));
      return { state: "value", id, nominal, ...band, inputs, assumed, takenFor: this.takenFor(id) };
    } catch (error) {
      // Running out of stack is a RangeError too, but a defect of ours, not of the inputs.
      if (error instanceof RangeError && !/call stack/i.test(error.message))
        return {
          state: "impossible",
          id,
          reason: describeContradiction(quantity, error.message, (path) => this.shown(path)),
        };
      throw error;
    }
  }
}

/**
 * Computes the wanted quantities of a build, each with its band.
 * @param values fields of the build, defaults filled in
 * @param wanted ids; what they rest on is computed as needed
 */
export function deriveAll(
  values: Values,
  catalog: Catalog,
  wanted: Iterable<string>,
  overrides: Overrides = new Map(),
): ReadonlyMap<string, Derivation> {
  const deriver = new Deriver(values, catalog, overrides);
  for (const id of wanted) deriver.derive(id);
  return deriver.results;
}
