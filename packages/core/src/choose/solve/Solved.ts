import type { Conflict } from "./findConflicts.ts";
import type { Family } from "./findFamily.ts";
import type { Range } from "./findRanges.ts";
import type { Aim } from "./Wanted.ts";

/** What an aim comes to with the sizes found. */
export interface AimReached {
  readonly aim: Aim;
  /** [SI]; undefined where the sizes contradict each other. */
  readonly value: number | undefined;
  readonly met: boolean;
}

export type Solved =
  /** Inputs are missing that are not wanted. */
  | { readonly state: "missing"; readonly missing: readonly string[] }
  /** Wanted dimensions on which no aim rests. */
  | { readonly state: "aimless"; readonly idle: readonly string[] }
  | {
      readonly state: "solved";
      /** As the aims give them, and as they can be ordered; by wanted dimension [SI]. */
      readonly exact: readonly number[];
      readonly sizes: readonly number[];
      /** Each aim with the allowance by which it and every member of the family was judged. */
      readonly reached: readonly AimReached[];
      /** Where something is to be met exactly, and other sizes do so as well. */
      readonly family?: Family & { readonly reached: readonly (readonly AimReached[])[] };
      /** Where all aims are bounds: from where to where each dimension may lie, the others chosen to suit. */
      readonly ranges?: readonly Range[];
    }
  | {
      readonly state: "conflict";
      /** The fewest aims that cannot be met together: the first of `conflicts`, or all where the steps are to blame. */
      readonly conflict: readonly Aim[];
      /** All that pull against each other, with no aim in two of them; empty where the steps are to blame. */
      readonly conflicts: readonly Conflict[];
      /** The sizes that come nearest to all, before and after they were put on steps, and what they reach. */
      readonly exact: readonly number[];
      readonly sizes: readonly number[];
      readonly reached: readonly AimReached[];
      /** Met exactly, but not by sizes that can be ordered in these steps. */
      readonly bySteps: boolean;
      /** Wanted dimensions, by their number, between whose bounds no step lies. */
      readonly stepless: readonly number[];
    };
