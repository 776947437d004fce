import { Chain } from "../derive/Chain.ts";
import type { Derivation } from "../derive/Derivation.ts";
import { deriveAll } from "../derive/deriveAll.ts";
import { quantities } from "../derive/generated/quantities.ts";
import { type Asking, pathsOf } from "../derive/groupsOf.ts";
import { isAssumed } from "../derive/isAssumed.ts";
import { isContradiction } from "../derive/isContradiction.ts";
import { unmoved } from "../derive/Moved.ts";
import { routeAt, routeOf, type TakenRoute } from "../derive/routeOf.ts";
import { withDefaults } from "../derive/withDefaults.ts";
import type { Build } from "../read/Build.ts";
import type { FieldValue, TableRow } from "../read/FieldValue.ts";
import type { Taken } from "./TraceKind.ts";

/** What someone asks of a build, with its way taken. */
export interface Asked {
  readonly missing: readonly string[];
  readonly assumed: readonly string[];
  readonly takenFor: readonly string[];
  /** The way taken, and what it asks for on it. */
  readonly route: TakenRoute;
  /** @throws RangeError when the inputs cannot be; call it only when nothing is missing */
  readonly take: () => Taken;
}

/**
 * One build at its nominal values, defaults filled in: fields and quantities as plain numbers, for traces and
 * pictures. Bands are searched only when
 * asked for, so it follows a builder's typing.
 */
export class Nominals {
  private readonly values: ReadonlyMap<string, FieldValue>;
  private readonly chain: Chain;

  constructor(build: Build) {
    this.values = withDefaults(build);
    this.chain = new Chain(this.values, quantities);
  }

  /** A field or quantity [SI]; undefined when it is missing, cannot be, or is no number. */
  size(path: string): number | undefined {
    if (this.lacking(path).length > 0) return undefined;
    try {
      const value = this.chain.at(path, unmoved);
      return Number.isFinite(value) ? value : undefined;
    } catch (error) {
      if (isContradiction(error)) return undefined;
      throw error;
    }
  }

  /**
   * A field or quantity with its tolerance [SI]; undefined when it is missing or cannot be. For a quantity the worst
   * case is searched: at once for a sum, up to a second for what is searched over a cycle.
   */
  band(path: string): { readonly low: number; readonly nominal: number; readonly high: number } | undefined {
    const value = this.chain.value(path);
    if (value?.kind === "dimension") return value;
    const derived = quantities.has(path) ? this.derive(path) : undefined;
    return derived?.state === "value" ? derived : undefined;
  }

  /** A quantity with its band and what spreads it. @throws Error when there is none of that id */
  derive(id: string): Derivation {
    return deriveAll(this.values, quantities, [id]).get(id)!;
  }

  /** The word of a choice. */
  word(path: string): string | undefined {
    const value = this.chain.value(path);
    return value?.kind === "choice" ? value.value : undefined;
  }

  /** The rows of a table. */
  rows(path: string): readonly TableRow[] | undefined {
    const value = this.chain.value(path);
    return value?.kind === "table" ? value.rows : undefined;
  }

  /** A field, its default where it was left out; undefined where there is none. */
  field(path: string): FieldValue | undefined {
    return this.chain.value(path);
  }

  /** Whether a value is a documented default, not something the build states. */
  isAssumed(path: string): boolean {
    return isAssumed(this.chain.value(path));
  }

  /** Fields under a field or quantity that the build does not give. @throws Error when there is none of that name */
  lacking(path: string): readonly string[] {
    return this.chain.finder.lacking(path);
  }

  /** Takes what something asks for, by the surest way that the build allows. */
  ask(asking: Asking): Asked {
    const { finder } = this.chain;
    const route =
      asking.routes.length > 0 ? routeOf(asking, (path) => finder.lacking(path).length) : routeAt(asking, 0);
    const paths = pathsOf({ ...route, routes: [] });
    const roots = new Set(paths.flatMap((path) => [...finder.rootsOf(path)]));
    return {
      missing: [...new Set(paths.flatMap((path) => finder.lacking(path)))].sort(),
      assumed: [...roots].filter((path) => this.isAssumed(path)).sort(),
      takenFor: route.assumes === undefined ? [] : [route.assumes],
      route,
      take: () => ({ numbers: this.chain.numbersOf(route, unmoved), ...this.chain.fixedOn(route) }),
    };
  }
}
