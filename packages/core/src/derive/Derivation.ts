import type { RootSumSquare } from "./statistics/rootSumSquare.ts";

/** What one toleranced input does to a quantity, on its own. */
export interface Spread {
  readonly path: string;
  /** Value with this input at its low end and at its high end, all others nominal. */
  readonly atLow: number;
  readonly atHigh: number;
  /** Part of the sum of all such differences, 0 to 1. */
  readonly share: number;
}

/** A quantity that could be computed, in SI. */
export interface DerivedValue {
  readonly state: "value";
  readonly id: string;
  readonly nominal: number;
  readonly low: number;
  readonly high: number;
  /** Values of its direct inputs by name in the formula. */
  readonly inputs: Readonly<Record<string, number>>;
  /** Largest first; only inputs that have a tolerance and matter. */
  readonly spread: readonly Spread[];
  /** Statistical band beside the worst case; absent where a band has no meaning, or no more than the band was asked for. */
  readonly rootSumSquare?: RootSumSquare;
  /** Paths of fields that rest on a documented default. */
  readonly assumed: readonly string[];
  /** What the ways taken to it take for granted, in words. */
  readonly takenFor: readonly string[];
}

/** A quantity whose inputs are missing. */
export interface MissingValue {
  readonly state: "missing";
  readonly id: string;
  /** Paths of the fields that would settle it. */
  readonly missing: readonly string[];
}

/** A quantity whose inputs cannot be: a rod shorter than the throw. */
export interface ImpossibleValue {
  readonly state: "impossible";
  readonly id: string;
  readonly reason: string;
}

export type Derivation = DerivedValue | MissingValue | ImpossibleValue;
