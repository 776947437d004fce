import type { VerdictWord } from "trialfit";
import type { CountWord, LineView } from "./protocol.ts";

/** The same of both builds: of the one on the bench, and of the other. */
export type Both<T> = readonly [bench: T, other: T];

/** One of two builds that stand side by side. */
export interface SideView {
  readonly name: string;
  readonly sound: boolean;
  readonly counts: Readonly<Record<CountWord, number>>;
}

/** A value that is not the same in both. */
export interface SizeRow {
  readonly path: string;
  readonly label: string;
  /** As written; absent where the build has none. */
  readonly texts: Both<string | undefined>;
  /** What was taken for a tolerance that is not stated. */
  readonly taken: Both<string | undefined>;
  /** How far the one on the bench is from the other, or what differs beside the size. */
  readonly by: string;
}

/** A changed value that moves something, and what it does alone. */
export interface CauseView {
  readonly path: string;
  readonly label: string;
  readonly text?: string;
}

/** The causes that weigh most, and how many others there are. */
export interface CausesView {
  readonly causes: readonly CauseView[];
  readonly others: number;
}

/** A rule that does not say the same of both. */
export interface VerdictRow extends CausesView {
  readonly rule: string;
  readonly title: string;
  readonly weight: string;
  readonly words: Both<VerdictWord>;
  /** The comparison that decides each, in words. */
  readonly glances: Both<string | undefined>;
}

/** A quantity that rules compare, where it is not the same in both. */
export interface NumberRow extends CausesView {
  readonly id: string;
  readonly name: string;
  readonly texts: Both<string>;
  readonly by: string;
}

/** Two builds side by side. */
export type PairView =
  | {
      readonly state: "compared";
      readonly sides: Both<SideView>;
      /** What is left out of one of them, since it cannot be read. */
      readonly notes: readonly string[];
      readonly sizes: readonly SizeRow[];
      /** Those that stand worse on the bench first. */
      readonly verdicts: readonly VerdictRow[];
      /** Those that moved most first. */
      readonly numbers: readonly NumberRow[];
    }
  /** One of them cannot be read, and why. */
  | { readonly state: "unread"; readonly lines: readonly LineView[] };
