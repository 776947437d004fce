import type { Report } from "../../report/Report.ts";
import type { AimKind } from "./Wanted.ts";

/** One wanted dimension as it was found. */
export interface SolvedField {
  readonly path: string;
  readonly label: string;
  /** As the aims give it, and as it can be ordered [SI]. */
  readonly exact: number;
  readonly value: number;
  readonly unit: string;
  /** As it is written in a build file. */
  readonly text: string;
}

/** One aim and what it comes to [SI]. */
export interface SolvedAim {
  readonly id: string;
  readonly name: string;
  readonly kind: AimKind;
  readonly wanted: number;
  readonly allowance: number;
  readonly reached?: number;
  readonly met: boolean;
  readonly unit: string;
  readonly decimals: number;
}

/** What `solve` found. Plain data; numbers in SI, `unit` is the one to show them in. */
export type Solution = { readonly build: string } & (
  | {
      readonly state: "solved";
      readonly fields: readonly SolvedField[];
      readonly aims: readonly SolvedAim[];
      /** Where there are other solutions: how many dimensions are free, which move together, and some of them. */
      readonly family?: {
        readonly freedom: number;
        readonly moves: readonly { readonly path: string; readonly label: string; readonly change: number }[];
        readonly members: readonly (readonly SolvedField[])[];
      };
      /** The build with the dimensions found, judged over their usual tolerances. */
      readonly report: Report;
    }
  | {
      readonly state: "conflict";
      /** Ids of the fewest aims that cannot be met together. */
      readonly conflict: readonly string[];
      /** Sizes that meet them exist, but none in the steps that can be ordered. */
      readonly bySteps: boolean;
      /** The sizes that come nearest. */
      readonly fields: readonly SolvedField[];
      readonly aims: readonly SolvedAim[];
    }
  /** Fields that the aims need and that are neither given nor wanted. */
  | { readonly state: "missing"; readonly missing: readonly string[] }
  /** Wanted dimensions on which no aim rests. */
  | { readonly state: "aimless"; readonly idle: readonly string[] }
);
