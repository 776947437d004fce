import type { System } from "@trialfit/rules";
import type { TableRow } from "../read/FieldValue.ts";

/** A named source of a formula: an id of `rules/sources.yaml`, and where in it. */
export interface SourceReference {
  readonly id: string;
  readonly where?: string;
}

/** A worked value: inputs as people write them, and the result with half a unit of its last digit as tolerance. */
export interface QuantityExample {
  readonly given: Readonly<Record<string, string>>;
  readonly expect: string;
  /** Published example that it reproduces, where there is one. */
  readonly from?: SourceReference;
}

/** One row of what a value counts or sums. */
export interface ListedRow {
  readonly label: string;
  readonly text: string;
}

/** One of several ways to the same value, by what is known. */
export interface Route {
  /** Names of inputs, choices and tables that only this way needs. */
  readonly needs: readonly string[];
  /** What this way takes for granted; the report says so. */
  readonly assumes?: string;
}

/** What becomes of a gap that is stated cold: the quantity that gives it hot, or why cold is enough. */
export type WhenHot = { readonly quantity: string } | { readonly coldOnly: string };

type Names<T> = Readonly<Record<keyof T & string, string>>;

/**
 * One derived value. Everything that says what it is stands here and nowhere else: labels, units, pages,
 * formula, and what the evaluator computes.
 */
export interface QuantityDeclaration<N extends Names<N>, C extends Names<C>, T extends Names<T>> {
  /** Also its name in rules. */
  readonly id: string;
  readonly name: string;
  /** Symbol as the trade or a textbook writes it, `B_g` for a subscript. */
  readonly symbol: string;
  /** Unit in which it is shown. The computed value is SI. */
  readonly unit: string;
  /** Decimals shown in that unit. */
  readonly decimals: number;
  readonly system: System;
  /** What it means, which sign, and what it is good for; one to three sentences. */
  readonly meaning: string;
  /** Name in the formula → field path or id of another quantity. */
  readonly inputs: N;
  /** Words that the computation needs: name → field path. */
  readonly choices?: C;
  /** Tables: name → field path. */
  readonly tables?: T;
  /**
   * Ways to the value, the surest first: the first whose needs are all there is taken, and what the others need
   * is not asked for and not there in `compute`. Inputs that no way names are always needed.
   */
  readonly routes?: readonly [Route, Route, ...Route[]];
  /**
   * The formula over the input names, `pi` and constants in SI, in ordinary algebra. A property test holds it
   * to `compute`, and its units must balance. Absent where no closed formula exists: then `method` says how.
   */
  readonly formula?: string;
  /** How it is computed, in words, where one closed formula does not do. */
  readonly method?: string;
  /**
   * Beside a method: a formula for each case, by the word of the only choice or by the number of the way, from 1.
   * They are held to `compute` like a formula.
   */
  readonly cases?: Readonly<Record<string, string>>;
  /** SI numbers in, SI number out. @throws RangeError when the inputs cannot be. */
  readonly compute: (
    numbers: Readonly<Record<keyof N & string, number>>,
    words: Readonly<Record<keyof C & string, string>>,
    tables: Readonly<Record<keyof T & string, readonly TableRow[]>>,
    /** Number of the way taken, from 0. */
    route: number,
  ) => number;
  /**
   * `monotone`: over any tolerance the extremes lie at ends of inputs. `guarded`: they may lie inside, so inner
   * points are searched too. Anything that is a least or greatest over crank angle is guarded.
   */
  readonly shape: "monotone" | "guarded";
  /** Where the formula may be used, in words. */
  readonly valid: string;
  readonly sources: readonly [SourceReference, ...SourceReference[]];
  readonly examples: readonly [QuantityExample, ...QuantityExample[]];
  /** True for a value that no rule reads but people want to see. */
  readonly display?: true;
  /** True where a band has no meaning (a place, such as a crank angle): shown at the nominal values, never judged. */
  readonly nominalOnly?: true;
  /** Of a gap at the temperature at which sizes are measured: what becomes of it when the engine is hot. */
  readonly hot?: WhenHot;
  /** What the value counts, row by row at the nominal values, as an explanation prints it. Takes what `compute` takes. */
  readonly listing?: (numbers: Readonly<Record<keyof N & string, number>>) => readonly ListedRow[];
}

/** A declared quantity with its input types forgotten, as the evaluator handles it. */
export interface Quantity {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly unit: string;
  readonly decimals: number;
  readonly system: System;
  readonly meaning: string;
  readonly inputs: Readonly<Record<string, string>>;
  readonly choices: Readonly<Record<string, string>>;
  readonly tables: Readonly<Record<string, string>>;
  readonly routes: readonly Route[];
  readonly formula: string | undefined;
  readonly method: string | undefined;
  readonly cases: Readonly<Record<string, string>>;
  readonly compute: (
    numbers: Readonly<Record<string, number>>,
    words: Readonly<Record<string, string>>,
    tables: Readonly<Record<string, readonly TableRow[]>>,
    route: number,
  ) => number;
  readonly shape: "monotone" | "guarded";
  readonly valid: string;
  readonly sources: readonly SourceReference[];
  readonly examples: readonly QuantityExample[];
  readonly display: boolean;
  readonly nominalOnly: boolean;
  readonly hot: WhenHot | undefined;
  readonly listing: ((numbers: Readonly<Record<string, number>>) => readonly ListedRow[]) | undefined;
}

/**
 * Declares a quantity. The input names are checked by the compiler; everything else by the catalog's checks.
 * @throws Error when it has neither formula nor method, one formula for several ways, or cases without a method.
 */
export function quantity<
  const N extends Names<N>,
  const C extends Names<C> = Record<never, string>,
  const T extends Names<T> = Record<never, string>,
>(declaration: QuantityDeclaration<N, C, T>): Quantity {
  if ((declaration.formula === undefined) === (declaration.method === undefined)) {
    throw new Error(`${declaration.id}: give either a formula or a method`);
  }
  if (declaration.routes !== undefined && declaration.formula !== undefined) {
    throw new Error(`${declaration.id}: several ways need a method, not a formula`);
  }
  if (declaration.cases !== undefined && declaration.method === undefined) {
    throw new Error(`${declaration.id}: formulas for cases need a method that tells the cases apart`);
  }
  return {
    ...declaration,
    choices: declaration.choices ?? {},
    tables: declaration.tables ?? {},
    routes: declaration.routes ?? [],
    formula: declaration.formula,
    method: declaration.method,
    cases: declaration.cases ?? {},
    display: declaration.display ?? false,
    nominalOnly: declaration.nominalOnly ?? false,
    hot: declaration.hot,
    listing: declaration.listing,
  } as Quantity;
}
