import { everyRoot } from "../../derive/everyRoot.ts";
import { influencesOf } from "../../derive/influencesOf.ts";
import { differingFields } from "../../derive/places.ts";
import type { Catalog } from "../../derive/rootsOf.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import { placingFields } from "../../read/positions.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** Entries of a build that decide facts, by all that a build can have: what decides a default is among them. */
export class Influences {
  /** Fields that may differ from place to place in the engine. */
  private readonly differing: ReadonlySet<string>;
  private readonly known = new Map<string, ReadonlySet<string>>();
  private readonly catalog: Catalog;

  /** @param all every set of values out of which builds are made */
  constructor(catalog: Catalog, all: Iterable<Values>) {
    this.catalog = catalog;
    this.differing = new Set([...all].flatMap((values) => [...differingFields(values).keys()]));
  }

  /** Whether a fact may differ from place to place. */
  differs(fact: string): boolean {
    return (
      this.differing.size > 0 && [...everyRoot(this.catalog, fact)].some((path) => this.differing.has(path))
    );
  }

  /** Paths of all entries on which a field or quantity may depend. */
  of(fact: string): ReadonlySet<string> {
    let paths = this.known.get(fact);
    if (paths === undefined) {
      const placed = this.differs(fact) ? [...placingFields, ...this.differing] : [];
      paths = new Set([fact, ...placed].flatMap((path) => [...influencesOf(this.catalog, path)]));
      this.known.set(fact, paths);
    }
    return paths;
  }
}
