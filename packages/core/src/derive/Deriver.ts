import type { FieldValue } from "../read/FieldValue.ts";
import { fieldLabel } from "../read/fieldCatalog.ts";
import { formatNumber } from "../units/formatNumber.ts";
import { Chain } from "./Chain.ts";
import type { Derivation } from "./Derivation.ts";
import { describeContradiction } from "./describeContradiction.ts";
import { isAssumed } from "./isAssumed.ts";
import { isContradiction } from "./isContradiction.ts";
import { movedAlong, unmoved } from "./Moved.ts";
import type { Quantity } from "./Quantity.ts";
import { type Asked, derivationKey, rememberDerivation, rememberedDerivation } from "./rememberDerivation.ts";
import type { Catalog, Overrides } from "./rootsOf.ts";
import type { Steps } from "./Steps.ts";
import { searchBandInSteps, type Tolerance } from "./searchBand.ts";
import { rootSumSquare } from "./statistics/rootSumSquare.ts";
import { unlessImpossible } from "./unlessImpossible.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** The quantities of one build, derived one by one as they are asked for. */
export class Deriver {
  /** What was derived so far. */
  readonly results = new Map<string, Derivation>();
  private readonly nominals = new Map<string, number | undefined>();
  /** The same quantities at single values. */
  readonly chain: Chain;
  private readonly given: Values;
  private readonly catalog: Catalog;
  private readonly overrides: Overrides;
  private readonly asked: Asked;

  /**
   * @param chain of a build with the same nominal values, words and tables, whose bands alone are others
   * @param asked `band` where the statistical band is not looked at: it costs about a tenth of the search
   */
  constructor(
    values: Values,
    catalog: Catalog,
    overrides: Overrides = new Map(),
    chain: Chain = new Chain(values, catalog, overrides),
    asked: Asked = "whole",
  ) {
    this.chain = chain;
    this.given = values;
    this.catalog = catalog;
    this.overrides = overrides;
    this.asked = asked;
  }

  /** A deriver of bands alone, for verdicts by the thousand. */
  static ofBands(values: Values, catalog: Catalog, chain?: Chain): Deriver {
    return new Deriver(values, catalog, undefined, chain, "band");
  }

  /** What the build has under a path, or was handed in for it. */
  private value(path: string): FieldValue | undefined {
    return this.overrides.get(path) ?? this.given.get(path);
  }

  /** How many bands and nominal values were found so far. */
  get found(): number {
    return this.results.size + this.nominals.size;
  }

  /** A quantity at the nominal values [SI], or undefined where inputs of it are missing or cannot be. */
  nominal(id: string): number | undefined {
    if (this.nominals.has(id)) return this.nominals.get(id);
    const lacks = this.chain.finder.lacking(id).length > 0;
    const nominal = lacks ? undefined : unlessImpossible(() => this.chain.at(id, unmoved));
    this.nominals.set(id, nominal);
    return nominal;
  }

  /** The same, where it was worked out before. */
  knownNominal(id: string): number | undefined {
    const derived = this.results.get(id);
    return derived?.state === "value" ? derived.nominal : this.nominals.get(id);
  }

  /** What needs no search: a quantity that was derived from the same values before, or lacks an input. */
  known(id: string): Derivation | undefined {
    const missing = this.chain.finder.lacking(id);
    const known =
      this.results.get(id) ??
      (missing.length > 0
        ? { state: "missing", id, missing }
        : rememberedDerivation(this.keyOf(id), this.asked));
    if (known !== undefined) this.results.set(id, known);
    return known;
  }

  /** Derives a quantity with its band. */
  *derive(id: string): Steps<Derivation> {
    const known = this.known(id);
    if (known !== undefined) return known;
    const result = yield* this.compute(this.catalog.get(id)!, [...this.chain.finder.rootsOf(id)]);
    rememberDerivation(this.keyOf(id), result, this.asked);
    this.results.set(id, result);
    return result;
  }

  private keyOf(id: string): string {
    const { finder } = this.chain;
    const rests = {
      quantity: this.catalog.get(id)!,
      paths: finder.rootsOf(id),
      ways: [...finder.waysTo(id)].join(),
    };
    return derivationKey(rests, (path) => this.value(path));
  }

  /** A direct input as text for people, with its name. */
  private shown(path: string): string | undefined {
    const value = this.value(path);
    if (value?.kind === "dimension") return `${fieldLabel(path)} ${value.text}`;
    const other = this.catalog.get(path);
    const nominal = other === undefined ? undefined : this.nominal(path);
    if (other === undefined || nominal === undefined) return undefined;
    return `${other.name} ${formatNumber(nominal, other.unit, { decimals: other.decimals })}`;
  }

  /** What the ways taken down to the fields take for granted. */
  private takenFor(id: string): readonly string[] {
    if (!this.catalog.has(id) || this.overrides.has(id)) return [];
    const { inputs, assumes } = this.chain.finder.routeOf(id);
    const below = Object.values(inputs).flatMap((path) => this.takenFor(path));
    return [...new Set(assumes === undefined ? below : [assumes, ...below])];
  }

  private *compute(quantity: Quantity, roots: readonly string[]): Steps<Derivation> {
    const { id } = quantity;
    const tolerances = (quantity.nominalOnly ? [] : roots).flatMap((path): Tolerance[] => {
      const value = this.value(path);
      return value?.kind === "dimension" && value.low < value.high ? [{ path, ...value }] : [];
    });
    try {
      return { state: "value", id, ...(yield* this.values(quantity, roots, tolerances)) };
    } catch (error) {
      if (!isContradiction(error)) throw error;
      const reason = describeContradiction(quantity, error.message, (path) => this.shown(path));
      return { state: "impossible", id, reason };
    }
  }

  private *values(quantity: Quantity, roots: readonly string[], tolerances: readonly Tolerance[]) {
    const { id, shape, nominalOnly } = quantity;
    const nominal = this.chain.at(id, unmoved);
    const moved = movedAlong(tolerances.map(({ path }) => path));
    const at = (point: readonly number[]) => this.chain.at(id, moved(point));
    const guarded = shape === "guarded";
    const band = yield* searchBandInSteps(at, tolerances, nominal, guarded);
    const likely =
      nominalOnly || this.asked === "band"
        ? undefined
        : unlessImpossible(() => rootSumSquare(at, tolerances, band, guarded));
    return {
      nominal,
      ...band,
      ...(likely === undefined ? {} : { rootSumSquare: likely }),
      inputs: this.chain.inputsOf(quantity, unmoved),
      assumed: roots.filter((path) => isAssumed(this.value(path))).sort(),
      takenFor: this.takenFor(id),
    };
  }
}
