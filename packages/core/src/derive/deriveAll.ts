import type { FieldValue } from "../read/FieldValue.ts";
import { fieldLabel } from "../read/fieldCatalog.ts";
import { formatNumber } from "../units/formatNumber.ts";
import { Chain, movedBy } from "./Chain.ts";
import type { Derivation } from "./Derivation.ts";
import { describeContradiction } from "./describeContradiction.ts";
import { isAssumed } from "./isAssumed.ts";
import { isContradiction } from "./isContradiction.ts";
import type { Quantity } from "./Quantity.ts";
import { rememberDerivation } from "./rememberDerivation.ts";
import type { Catalog, Overrides } from "./rootsOf.ts";
import { searchBand, type Tolerance } from "./searchBand.ts";
import { rootSumSquare } from "./statistics/rootSumSquare.ts";

type Values = ReadonlyMap<string, FieldValue>;

export type { Overrides };

/** What a statistic comes to, or undefined where it meets inputs that cannot be: it must not change a value. */
function possibly<T>(statistic: () => T): T | undefined {
  try {
    return statistic();
  } catch (error) {
    if (isContradiction(error)) return undefined;
    throw error;
  }
}

class Deriver {
  readonly results = new Map<string, Derivation>();
  private readonly chain: Chain;
  private readonly catalog: Catalog;
  private readonly overrides: Overrides;

  constructor(values: Values, catalog: Catalog, overrides: Overrides) {
    this.chain = new Chain(values, catalog, overrides);
    this.catalog = catalog;
    this.overrides = overrides;
  }

  /** A direct input as text for people, with its name. */
  private shown(path: string): string | undefined {
    const value = this.chain.value(path);
    if (value?.kind === "dimension") return `${fieldLabel(path)} ${value.text}`;
    const derived = this.results.get(path);
    const other = this.catalog.get(path);
    if (other === undefined || derived?.state !== "value") return undefined;
    return `${other.name} ${formatNumber(derived.nominal, other.unit, { decimals: other.decimals })}`;
  }

  /** What the ways taken down to the fields take for granted. */
  private takenFor(id: string): readonly string[] {
    if (!this.catalog.has(id) || this.overrides.has(id)) return [];
    const { inputs, assumes } = this.chain.finder.routeOf(id);
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
    const { finder } = this.chain;
    const roots = [...finder.rootsOf(id)];
    const missing = finder.lacking(id);
    if (missing.length > 0) return { state: "missing", id, missing };
    const rests = { quantity, paths: roots, ways: [...finder.waysTo(id)].join() };
    const value = (path: string) => this.chain.value(path);
    return rememberDerivation(rests, value, () => this.compute(quantity, roots));
  }

  private compute(quantity: Quantity, roots: readonly string[]): Derivation {
    const { id } = quantity;
    const tolerances = (quantity.nominalOnly ? [] : roots).flatMap((path): Tolerance[] => {
      const value = this.chain.value(path);
      return value?.kind === "dimension" && value.low < value.high ? [{ path, ...value }] : [];
    });
    try {
      return { state: "value", id, ...this.values(quantity, roots, tolerances) };
    } catch (error) {
      if (!isContradiction(error)) throw error;
      const reason = describeContradiction(quantity, error.message, (path) => this.shown(path));
      return { state: "impossible", id, reason };
    }
  }

  private values(quantity: Quantity, roots: readonly string[], tolerances: readonly Tolerance[]) {
    const { id, shape, nominalOnly } = quantity;
    const nominal = this.chain.at(id, movedBy([]));
    const at = (point: readonly number[]) =>
      this.chain.at(id, movedBy(tolerances.map(({ path }, index) => [path, point[index]!])));
    const guarded = shape === "guarded";
    const band = searchBand(at, tolerances, nominal, guarded);
    const likely = nominalOnly ? undefined : possibly(() => rootSumSquare(at, tolerances, band, guarded));
    return {
      nominal,
      ...band,
      ...(likely === undefined ? {} : { rootSumSquare: likely }),
      inputs: this.chain.inputsOf(quantity, movedBy([])),
      assumed: roots.filter((path) => isAssumed(this.chain.value(path))).sort(),
      takenFor: this.takenFor(id),
    };
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
