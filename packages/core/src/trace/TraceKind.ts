import type { RodContact } from "@trialfit/mechanics";
import type { Asking } from "../derive/groupsOf.ts";
import type { TableRow } from "../read/FieldValue.ts";

/** What a trace is computed from: SI numbers, words and tables, by the names under which it asks for them. */
export interface Taken {
  readonly numbers: Readonly<Record<string, number>>;
  readonly words: Readonly<Record<string, string>>;
  readonly tables: Readonly<Record<string, readonly TableRow[]>>;
}

/**
 * Which extreme of a trace is meant: the greatest value, the least, the one of the largest size either way, or the
 * least with its sign turned (a pull, where pressing is positive).
 */
export type Take = "greatest" | "least" | "size" | "pull";

/** The value of the catalog that names an extreme of a trace. */
export interface NamedExtreme {
  readonly take: Take;
  /** Id of a quantity, or path of a field. */
  readonly of: string;
}

/** Something that happens over the crank angle: what it needs, and how it is computed at every angle. */
export interface TraceKind extends Asking {
  readonly id: string;
  readonly name: string;
  /** What it is, which sign, at which speed. */
  readonly meaning: string;
  /** Unit in which it is shown; values are SI. */
  readonly unit: string;
  readonly decimals: number;
  /** Turns of the crankshaft after which it repeats. */
  readonly turns: 1 | 2;
  /** The top dead centre from which `over` counts; traces always count from firing. */
  readonly from: "firing" | "overlap";
  /** @throws RangeError when the inputs cannot be */
  readonly over: (taken: Taken) => (angle: number) => number;
  /**
   * For a distance from the rod: where it comes nearest at an angle, seen from banks that lean so far [rad], from
   * every bank when left out. What the outline leaves uncertain is not taken off here.
   */
  readonly contact?: (taken: Taken, tilts?: readonly number[]) => (angle: number) => RodContact;
  /** The extremes that the catalog names; the first is the one that a picture marks. */
  readonly extremes: readonly [NamedExtreme, ...NamedExtreme[]];
}

/** What a trace asks for where a quantity asks for the same. */
export function asksLike({ inputs, choices, tables, routes }: Asking): Asking {
  return { inputs, choices, tables, routes };
}
