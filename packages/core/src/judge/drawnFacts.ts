import { Chain } from "../derive/Chain.ts";
import { isContradiction } from "../derive/isContradiction.ts";
import { type Moved, movedOnce } from "../derive/Moved.ts";
import type { Place } from "../derive/places.ts";
import type { Catalog } from "../derive/rootsOf.ts";
import { drawEngine, type Varying, varyingOf } from "../derive/statistics/drawEngine.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { Lookup } from "./decide.ts";
import { exactly, type Fact } from "./Fact.ts";
import { factOfField } from "./lookupOf.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** Facts of drawn engines, or of one place in them: one value each, without bands. */
export class DrawnFacts {
  private readonly chain: Chain;
  private readonly values: Values;
  private readonly catalog: Catalog;
  private readonly varying: readonly Varying[];
  private readonly lacking = new Map<string, readonly string[]>();

  /**
   * @param values what the build gives, defaults filled in
   * @param whole the values of the engine as a whole
   * @param place the place, or none for the engine as a whole
   */
  constructor(values: Values, whole: Values, catalog: Catalog, place?: Place) {
    this.values = place?.values ?? whole;
    this.catalog = catalog;
    this.chain = new Chain(this.values, catalog);
    this.varying = varyingOf(values, place ?? { values: whole });
  }

  private lackingFor(id: string): readonly string[] {
    let lacking = this.lacking.get(id);
    if (lacking === undefined) {
      lacking = this.chain.finder.lacking(id).map((path) => path.replace(/\.place$/, ""));
      this.lacking.set(id, lacking);
    }
    return lacking;
  }

  private fact(name: string, moved: Moved): Fact {
    const drawn = moved.fields.get(name);
    if (drawn !== undefined) return exactly(drawn);
    if (!this.catalog.has(name)) {
      const given = factOfField(name, this.values.get(name));
      return given.kind === "band" ? exactly(given.nominal) : given;
    }
    const missing = this.lackingFor(name);
    if (missing.length > 0) return { kind: "missing", missing };
    try {
      return exactly(this.chain.at(name, moved));
    } catch (error) {
      if (!isContradiction(error)) throw error;
      return { kind: "missing", missing: [], reason: error.message };
    }
  }

  /**
   * The facts of one drawn engine.
   * @param seed whole number from 0 to 2³² − 1
   * @param number which of the engines, from 0
   */
  engine(seed: number, number: number): Lookup {
    return this.at(drawEngine(this.varying, seed, number));
  }

  /**
   * The facts of one engine; each is worked out when it is first asked for.
   * @param fields dimensions by path [SI]; any other is at its nominal value
   */
  at(fields: ReadonlyMap<string, number>): Lookup {
    const moved = movedOnce(fields);
    const known = new Map<string, Fact>();
    return (name) => {
      let fact = known.get(name);
      if (fact === undefined) {
        fact = this.fact(name, moved);
        known.set(name, fact);
      }
      return fact;
    };
  }
}
