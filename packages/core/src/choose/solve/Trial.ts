import { Chain } from "../../derive/Chain.ts";
import { isContradiction } from "../../derive/isContradiction.ts";
import { movedOnce } from "../../derive/Moved.ts";
import type { Catalog } from "../../derive/rootsOf.ts";
import type { DimensionValue, FieldValue } from "../../read/FieldValue.ts";
import { type Aim, missOf, type Wanted } from "./Wanted.ts";

/** Miss of an aim that has no value where the sizes contradict each other: far beyond any that can be. */
const IMPOSSIBLE = 1e6;

function exact(value: number, unit: string): DimensionValue {
  return {
    kind: "dimension",
    nominal: value,
    low: value,
    high: value,
    unit,
    text: "",
    provenance: "target",
    toleranceFrom: "none",
  };
}

/** Tries sizes of the wanted dimensions: what every aim comes to. Points are in shares of each wanted range, 0 to 1. */
export class Trial {
  readonly wanted: readonly Wanted[];
  readonly aims: readonly Aim[];
  private readonly chain: Chain;
  private readonly catalog: Catalog;

  private constructor(chain: Chain, catalog: Catalog, wanted: readonly Wanted[], aims: readonly Aim[]) {
    this.chain = chain;
    this.catalog = catalog;
    this.wanted = wanted;
    this.aims = aims;
  }

  /** @param values fields of the build, defaults filled in, without the wanted ones */
  static of(
    values: ReadonlyMap<string, FieldValue>,
    catalog: Catalog,
    wanted: readonly Wanted[],
    aims: readonly Aim[],
  ): Trial {
    const filled = new Map(values);
    for (const { path, low, high, unit } of wanted) filled.set(path, exact((low + high) / 2, unit));
    return new Trial(new Chain(filled, catalog), catalog, wanted, aims);
  }

  /** Paths of the fields that an aim cannot do without, and which wanted fields it rests on. */
  lacking(id: string): readonly string[] {
    return this.chain.finder.lacking(id);
  }

  restsOn(id: string): readonly Wanted[] {
    const roots = this.chain.finder.rootsOf(id);
    return this.wanted.filter(({ path }) => roots.has(path));
  }

  /** Whether an aim takes a search of its own, such as one over the crank angle, at every size that is tried. */
  get isDear(): boolean {
    return this.aims.some(({ id }) => this.takesSearch(id));
  }

  private takesSearch(id: string): boolean {
    const quantity = this.catalog.get(id);
    if (quantity === undefined) return false;
    const { shape, formula, cases } = quantity;
    if (shape === "guarded" && formula === undefined && Object.keys(cases).length === 0) return true;
    return Object.values(this.chain.finder.routeOf(id).inputs).some((input) => this.takesSearch(input));
  }

  sizesAt(point: readonly number[]): readonly number[] {
    return this.wanted.map(({ low, high }, index) => low + point[index]! * (high - low));
  }

  pointOf(sizes: readonly number[]): readonly number[] {
    return this.wanted.map(({ low, high }, index) =>
      high === low ? 0 : (sizes[index]! - low) / (high - low),
    );
  }

  /** What each aim comes to [SI]; undefined where the sizes contradict each other. */
  reached(sizes: readonly number[]): readonly (number | undefined)[] {
    const moved = movedOnce(new Map(this.wanted.map(({ path }, index) => [path, sizes[index]!] as const)));
    return this.aims.map(({ id }) => {
      try {
        return this.chain.at(id, moved);
      } catch (error) {
        if (isContradiction(error)) return undefined;
        throw error;
      }
    });
  }

  /** How far each aim is off at these sizes, in its allowances. */
  misses(sizes: readonly number[]): readonly number[] {
    return this.reached(sizes).map((value, index) =>
      value === undefined ? IMPOSSIBLE : missOf(this.aims[index]!, value),
    );
  }

  /** The same with one wanted dimension held at a size. */
  holding(index: number, size: number): Trial {
    const wanted = this.wanted.with(index, { ...this.wanted[index]!, low: size, high: size });
    return new Trial(this.chain, this.catalog, wanted, this.aims);
  }

  /** The same aims but for some. */
  without(left: ReadonlySet<string>): Trial {
    return this.withAims(this.aims.filter(({ id }) => !left.has(id)));
  }

  withAims(aims: readonly Aim[]): Trial {
    return new Trial(this.chain, this.catalog, this.wanted, aims);
  }
}

/** The aim that is farthest off. */
export function worstMiss(misses: readonly number[]): number {
  return misses.reduce((worst, miss) => Math.max(worst, Math.abs(miss)), 0);
}
