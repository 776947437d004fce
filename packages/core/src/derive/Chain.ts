import type { FieldValue, TableRow } from "../read/FieldValue.ts";
import type { Moved } from "./Moved.ts";
import { PointMemory } from "./PointMemory.ts";
import type { Quantity } from "./Quantity.ts";
import { type Catalog, type Overrides, type RootFinder, rootFinderOf } from "./rootsOf.ts";
import type { TakenRoute } from "./routeOf.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** What a computation is given that has no tolerance. */
interface Fixed {
  readonly words: Readonly<Record<string, string>>;
  readonly tables: Readonly<Record<string, readonly TableRow[]>>;
}

/** What a searching quantity rests on that can be moved, with its value at every point so far. */
interface Searched {
  readonly paths: readonly string[];
  readonly nominals: readonly number[];
  /** The point that is asked for. */
  readonly point: Float64Array;
  readonly memory: PointMemory;
}

/**
 * The quantities of one build at single values: the whole way from a quantity down to the entered fields, with any of
 * the fields moved. Nothing here knows of bands.
 */
export class Chain {
  readonly finder: RootFinder;
  /** Quantities whose computation is a search of its own. */
  private readonly searched = new Map<string, Searched>();
  private readonly nominals = new Map<string, number>();
  private readonly fixed = new Map<string, Fixed>();
  private readonly values: Values;
  private readonly catalog: Catalog;
  private readonly overrides: Overrides;

  constructor(values: Values, catalog: Catalog, overrides: Overrides = new Map()) {
    this.values = values;
    this.catalog = catalog;
    this.overrides = overrides;
    this.finder = rootFinderOf(catalog, values.keys(), overrides.keys());
  }

  /** What the build has under a path, or was handed in for it. */
  value(path: string): FieldValue | undefined {
    return this.overrides.get(path) ?? this.values.get(path);
  }

  /**
   * The value of a field or quantity with some fields moved [SI]; what does not rest on them is computed once.
   * @param moved fields by path, and every value worked out for these fields so far
   * @throws RangeError when the inputs cannot be
   */
  at(id: string, moved: Moved): number {
    const direct = moved.fields.get(id) ?? moved.known.get(id);
    if (direct !== undefined) return direct;
    const field = this.value(id);
    if (field?.kind === "dimension") return field.nominal;
    const touched = moved.fields.size > 0 && this.touches(id, moved);
    if (!touched) {
      const known = this.nominals.get(id);
      if (known !== undefined) return known;
    }
    const quantity = this.catalog.get(id)!;
    const result =
      touched && quantity.shape === "guarded" && !moved.once
        ? this.search(quantity, moved)
        : this.compute(quantity, moved);
    (touched ? moved.known : this.nominals).set(id, result);
    return result;
  }

  /** The direct inputs of a quantity by their name in its formula. */
  inputsOf(quantity: Quantity, moved: Moved): Record<string, number> {
    return this.numbersOf(this.finder.routeOf(quantity.id), moved);
  }

  /** The numbers on a way, by their names. @throws RangeError when the inputs cannot be */
  numbersOf({ inputs }: Pick<TakenRoute, "inputs">, moved: Moved): Record<string, number> {
    const values: Record<string, number> = {};
    for (const name in inputs) values[name] = this.at(inputs[name]!, moved);
    return values;
  }

  /** The words and tables on a way, by their names. */
  fixedOn({ choices, tables }: Pick<TakenRoute, "choices" | "tables">): Fixed {
    const words: Record<string, string> = {};
    const rows: Record<string, readonly TableRow[]> = {};
    for (const [name, path] of Object.entries(choices)) {
      const value = this.value(path);
      if (value?.kind === "choice") words[name] = value.value;
    }
    for (const [name, path] of Object.entries(tables)) {
      const value = this.value(path);
      if (value?.kind === "table") rows[name] = value.rows;
    }
    return { words, tables: rows };
  }

  private fixedOf({ id }: Quantity): Fixed {
    let fixed = this.fixed.get(id);
    if (fixed === undefined) {
      fixed = this.fixedOn(this.finder.routeOf(id));
      this.fixed.set(id, fixed);
    }
    return fixed;
  }

  private touches(id: string, { fields, touches }: Moved): boolean {
    let touched = touches.get(id);
    if (touched === undefined) {
      touched = false;
      for (const root of this.finder.rootsOf(id)) if (fields.has(root)) touched = true;
      touches.set(id, touched);
    }
    return touched;
  }

  private searchedOf({ id }: Quantity): Searched {
    let searched = this.searched.get(id);
    if (searched === undefined) {
      const given = [...this.finder.rootsOf(id)].flatMap((path) => {
        const value = this.value(path);
        return value?.kind === "dimension" ? [{ path, nominal: value.nominal }] : [];
      });
      const paths = given.map(({ path }) => path);
      searched = {
        paths,
        nominals: given.map(({ nominal }) => nominal),
        point: new Float64Array(paths.length),
        memory: new PointMemory(paths.length),
      };
      this.searched.set(id, searched);
    }
    return searched;
  }

  /** Computes a searching quantity once for each set of values that it rests on. */
  private search(quantity: Quantity, moved: Moved): number {
    const { paths, nominals, point, memory } = this.searchedOf(quantity);
    for (let index = 0; index < paths.length; index += 1)
      point[index] = moved.fields.get(paths[index]!) ?? nominals[index]!;
    return memory.at(point, () => this.compute(quantity, moved));
  }

  private compute(quantity: Quantity, moved: Moved): number {
    const { words, tables } = this.fixedOf(quantity);
    const { index } = this.finder.routeOf(quantity.id);
    const result = quantity.compute(this.inputsOf(quantity, moved), words, tables, index);
    if (!Number.isFinite(result))
      throw new RangeError(`${quantity.name.toLowerCase()} has no finite value for these inputs`);
    return result;
  }
}
