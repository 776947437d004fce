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
  /** How far from it is still as wanted: as stated, or what the steps leave. By this `met` is judged, and every member of a family. */
  readonly allowance: number;
  /** Whether the allowance was stated. */
  readonly stated: boolean;
  /** Whether it was written as a smaller value to a greater one: `wanted` is their middle, `allowance` half of their distance. */
  readonly isRange: boolean;
  readonly reached?: number;
  readonly met: boolean;
  readonly unit: string;
  readonly decimals: number;
}

/** From where to where a wanted dimension may lie, the others chosen to suit [SI]. */
export interface SolvedRange {
  readonly path: string;
  readonly label: string;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  /** As they are written in a build file. */
  readonly lowText: string;
  readonly highText: string;
}

/** The end of a wanted dimension's bounds at which it stands. */
export interface SolvedEnd {
  readonly path: string;
  readonly label: string;
  readonly end: "low" | "high";
  readonly text: string;
}

/** Aims that cannot be met together though any of them left out they could, or one that cannot be met by itself. */
export interface SolvedConflict {
  /** Ids of the aims. */
  readonly aims: readonly string[];
  /** Of an aim by itself: the nearest that it comes to [SI], and the bounds that keep it there. */
  readonly alone?: { readonly nearest?: number; readonly ends: readonly SolvedEnd[] };
}

/** A dimension that moves along a family of solutions. */
export interface SolvedMove {
  readonly path: string;
  readonly label: string;
  /** Change for each 1 of the first dimension that moves, both in SI; 1 of the first itself. */
  readonly change: number;
  /** To show sizes in. */
  readonly unit: string;
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
        readonly moves: readonly SolvedMove[];
        readonly members: readonly (readonly SolvedField[])[];
        /** What each member comes to, aim by aim, in the order of `members`. */
        readonly reached: readonly (readonly SolvedAim[])[];
      };
      /** Where all aims are bounds, in place of a family: from where to where each dimension may lie. */
      readonly ranges?: readonly SolvedRange[];
      /** The build with the dimensions found, judged over their usual tolerances. */
      readonly report: Report;
    }
  | {
      readonly state: "conflict";
      /** Ids of the fewest aims that cannot be met together: those of the first conflict, all where the steps are to blame. */
      readonly conflict: readonly string[];
      /** Each aim that cannot be met by itself, then every set that pulls against each other and holds no smaller one; an aim may be in several. Empty where the steps are to blame. */
      readonly conflicts: readonly SolvedConflict[];
      /** Sizes that meet them exist, but none in the steps that can be ordered. */
      readonly bySteps: boolean;
      /** Dimensions between whose bounds no step lies. */
      readonly stepless: readonly { readonly path: string; readonly label: string; readonly step: string }[];
      /** The sizes that come nearest: the aim farthest off as near as can be, and all met that can be at no cost to it. */
      readonly fields: readonly SolvedField[];
      readonly aims: readonly SolvedAim[];
    }
  /** Fields that the aims need and that are neither given nor wanted. */
  | { readonly state: "missing"; readonly missing: readonly string[] }
  /** Wanted dimensions on which no aim rests. */
  | { readonly state: "aimless"; readonly idle: readonly string[] }
);
