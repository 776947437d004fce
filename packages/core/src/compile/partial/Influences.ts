import { differingFields } from "../../derive/places.ts";
import type { Catalog } from "../../derive/rootsOf.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import { fields } from "../../read/fieldCatalog.ts";
import { everyRoot } from "./everyRoot.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** What says how many places of a kind an engine has, and which crankpin a cylinder's rod runs on. */
const PLACING = [
  "block.cylinders",
  "block.layout",
  "block.mainBearings",
  "crankshaft.rodsPerPin",
  "crankshaft.throws",
];

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
      const placed = this.differs(fact) ? [...PLACING, ...this.differing] : [];
      const found = new Set<string>();
      for (const path of [...everyRoot(this.catalog, fact), ...placed]) addField(path, found);
      paths = found;
      this.known.set(fact, paths);
    }
    return paths;
  }
}

/** Adds a field with all that decides its default. */
function addField(path: string, into: Set<string>): void {
  if (into.has(path)) return;
  into.add(path);
  const assumed = fields.get(path)?.spec.assumed;
  if (assumed === undefined) return;
  for (const other of assumed.unless ?? []) addField(other, into);
  if ("byChoice" in assumed) addField(assumed.byChoice, into);
}
