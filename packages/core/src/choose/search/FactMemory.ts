import { Deriver } from "../../derive/Deriver.ts";
import { influencesOf } from "../../derive/influencesOf.ts";
import type { Catalog } from "../../derive/rootsOf.ts";
import { finish } from "../../derive/Steps.ts";
import { withDefaults } from "../../derive/withDefaults.ts";
import type { Fact } from "../../judge/Fact.ts";
import { factOfDerivation, factOfField } from "../../judge/lookupOf.ts";
import type { Build } from "../../read/Build.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import { type Options, Projection } from "./Projection.ts";
import { Remembered } from "./Remembered.ts";

/** One fact, and what was found of it for choices that differ in what it rests on. */
interface Kept {
  readonly projection: Projection;
  readonly memory: Remembered<Fact>;
}

/**
 * The facts of every combination of parts, each found once for all choices between which it cannot tell. Values and
 * bands are those that an evaluation of the whole build finds.
 */
export class FactMemory {
  /** Facts that were found anew so far. */
  found = 0;
  private readonly fixed: Build;
  private readonly kinds: readonly (readonly Options[])[];
  private readonly catalog: Catalog;
  private readonly kept = new Map<string, Kept>();

  /** @param fixed the build without what is chosen */
  constructor(fixed: Build, kinds: readonly (readonly Options[])[], catalog: Catalog) {
    this.fixed = fixed;
    this.kinds = kinds;
    this.catalog = catalog;
  }

  /** Indices of the kinds of parts on which a fact may rest. */
  kindsOf(fact: string): readonly number[] {
    return this.keptOf(fact).projection.kinds;
  }

  /**
   * A fact as it is for a choice.
   * @param chosen index of the option of every kind; those of which the fact knows nothing may be any
   */
  at(fact: string, chosen: Int32Array): Fact {
    const { projection, memory } = this.keptOf(fact);
    return memory.at(projection.key(chosen), () => this.find(fact, chosen));
  }

  /** The values of the whole build with some parts chosen, defaults filled in. */
  valuesOf(chosen: Int32Array): ReadonlyMap<string, FieldValue> {
    const values = new Map(this.fixed.values);
    for (const [kind, options] of this.kinds.entries())
      for (const [path, value] of options[chosen[kind]!]!.values) values.set(path, value);
    return withDefaults({ ...this.fixed, values });
  }

  private find(fact: string, chosen: Int32Array): Fact {
    this.found += 1;
    const values = this.valuesOf(chosen);
    return this.catalog.has(fact)
      ? factOfDerivation(finish(Deriver.ofBands(values, this.catalog).derive(fact)))
      : factOfField(fact, values.get(fact));
  }

  private keptOf(fact: string): Kept {
    let kept = this.kept.get(fact);
    if (kept === undefined) {
      const projection = new Projection(this.kinds, influencesOf(this.catalog, fact));
      kept = { projection, memory: new Remembered(projection.size) };
      this.kept.set(fact, kept);
    }
    return kept;
  }
}
