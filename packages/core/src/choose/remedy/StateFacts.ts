import type { Derivation } from "../../derive/Derivation.ts";
import { Deriver } from "../../derive/Deriver.ts";
import { movedOnce } from "../../derive/Moved.ts";
import { placesOf, wholeValues } from "../../derive/places.ts";
import type { Catalog, RootFinder } from "../../derive/rootsOf.ts";
import type { Steps } from "../../derive/Steps.ts";
import { unlessImpossible } from "../../derive/unlessImpossible.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import type { WhereJudged } from "../../judge/whereJudged.ts";
import type { DimensionValue, FieldValue } from "../../read/FieldValue.ts";
import { narrowDimension } from "./narrowDimension.ts";

type Values = ReadonlyMap<string, FieldValue>;
type Kind = WhereJudged["placed"][number]["kind"];

/** The engine as a whole, or one place in it. */
interface Spot {
  readonly values: Values;
  readonly deriver: Deriver;
}

/** What every state of one build has in common, whatever size one of its dimensions has. */
export interface Common {
  readonly catalog: Catalog;
  readonly finder: RootFinder;
  /** Where a rule is judged: at each place of a kind, or undefined for the engine as a whole. */
  readonly placedAt: (rule: CompiledRule) => Kind | undefined;
}

/** The quantities of one state of a build: as it is, or with one dimension moved; each worked out when it is asked for. */
export class StateFacts {
  private readonly values: Values;
  private readonly common: Common;
  private readonly base: StateFacts | undefined;
  private readonly path: string;
  private readonly spots = new Map<Kind | undefined, readonly Spot[]>();

  /**
   * @param values fields of the build, defaults filled in
   * @param base the build as it is, where this is not it
   * @param path the dimension that is moved against it
   */
  constructor(values: Values, common: Common, base?: StateFacts, path = "") {
    this.values = values;
    this.common = common;
    this.base = base;
    this.path = path;
  }

  moved(path: string, value: DimensionValue): StateFacts {
    return new StateFacts(new Map(this.values).set(path, value), this.common, this, path);
  }

  /** The same with what stands under some paths kept more closely: each band a share of what it is. */
  narrowed(paths: Iterable<string>, share: number): StateFacts {
    const values = new Map(this.values);
    for (const path of paths) {
      const value = values.get(path);
      if (value?.kind === "dimension") values.set(path, narrowDimension(value, share));
    }
    return new StateFacts(values, this.common);
  }

  private spotsOf(rule: CompiledRule): readonly Spot[] {
    const kind = this.common.placedAt(rule);
    let spots = this.spots.get(kind);
    if (spots === undefined) {
      const all =
        kind === undefined
          ? [wholeValues(this.values)]
          : placesOf(kind, this.values).map((one) => one.values);
      spots = all.map((values) => ({ values, deriver: Deriver.ofBands(values, this.common.catalog) }));
      this.spots.set(kind, spots);
    }
    return spots;
  }

  /** The fields at each spot where a rule is judged. */
  fieldsAt(rule: CompiledRule): readonly Values[] {
    return this.spotsOf(rule).map(({ values }) => values);
  }

  isQuantity(fact: string): boolean {
    return this.common.catalog.has(fact);
  }

  /** Whether a quantity takes a search and rests on the dimension that was moved. */
  isDear(fact: string): boolean {
    return (
      this.base !== undefined && this.common.catalog.get(fact)?.shape === "guarded" && this.touches(fact)
    );
  }

  private touches(fact: string): boolean {
    return this.common.finder.rootsOf(fact).has(this.path);
  }

  /** A quantity at a spot with its band; where nothing under it was moved, that of the build as it is. */
  *derivation(fact: string, rule: CompiledRule, spot: number): Steps<Derivation> {
    const owner = this.base === undefined || this.touches(fact) ? this : this.base;
    return yield* owner.spotsOf(rule)[spot]!.deriver.derive(fact);
  }

  /** The same in the build as it is. */
  before(fact: string, rule: CompiledRule, spot: number): Steps<Derivation> {
    return (this.base ?? this).derivation(fact, rule, spot);
  }

  /** A quantity at the nominal values [SI]; undefined where inputs of it are missing or cannot be. */
  nominal(fact: string, rule: CompiledRule, spot: number): number | undefined {
    const { deriver } = (this.base ?? this).spotsOf(rule)[spot]!;
    if (this.base === undefined || !this.touches(fact)) return deriver.nominal(fact);
    const size = this.spotsOf(rule)[spot]!.values.get(this.path);
    if (size?.kind !== "dimension" || deriver.chain.finder.lacking(fact).length > 0) return undefined;
    // The chain of the build as it is knows already what does not rest on the dimension.
    const moved = movedOnce(new Map([[this.path, size.nominal]]));
    return unlessImpossible(() => deriver.chain.at(fact, moved));
  }
}
