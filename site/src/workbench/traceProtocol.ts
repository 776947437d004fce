import type { ChoosingGround } from "./choosingProtocol.ts";

/** A number that goes into a step. */
export interface TraceInput {
  /** Markup of our own: the symbol. */
  readonly symbol: string;
  readonly label: string;
  /** With its unit: as written, or as a step before gave it. */
  readonly text: string;
  /** Path of the entry; absent for what a step before gave. */
  readonly path?: string;
  /** Number of the step before, from 1. */
  readonly step?: number;
  /** A documented default. */
  readonly assumed: boolean;
}

/** One quantity on the way. */
export interface TraceStepView {
  readonly id: string;
  readonly name: string;
  /** Markup of our own: the formula, the same with the numbers put in. Absent where there is no closed formula. */
  readonly formula?: string;
  readonly numbers?: string;
  /** How it is computed, in words. */
  readonly method?: string;
  readonly inputs: readonly TraceInput[];
  readonly beside: readonly { readonly path: string; readonly label: string; readonly text: string }[];
  readonly takenFor: readonly string[];
  /** Markup of the symbol, and the value with its unit. */
  readonly symbol: string;
  readonly value: string;
  /** The value as the formula gives it, where that is in another unit. */
  readonly plain?: string;
}

/** How one number comes about, or why it does not. */
export type TraceView =
  | { readonly state: "value"; readonly name: string; readonly steps: readonly TraceStepView[] }
  | { readonly state: "none"; readonly name: string; readonly why: string };

/** What the worker is asked. */
export interface ToTrace {
  readonly kind: "trace";
  readonly ground: Pick<ChoosingGround, "text" | "file">;
  /** Ids of quantities. */
  readonly ids: readonly string[];
}

/** Each number by its id. */
export interface FromTrace {
  readonly kind: "traced";
  readonly traces: Readonly<Record<string, TraceView>>;
}
