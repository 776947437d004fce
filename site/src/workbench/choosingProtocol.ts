import type { FindingRemedies, Provenance, RemedyProgress, Solution, SolvePhase, Stage } from "trialfit";
import type { DocumentView, ItemView, LineView } from "./protocol.ts";

/** The build file in which sizes or changes are sought, and what it is judged by. */
export interface ChoosingGround {
  readonly text: string;
  readonly file: string;
  readonly set?: string | undefined;
  readonly stage?: Stage | undefined;
}

/** A size as it is written at an entry of the build file. */
export interface SizeText {
  readonly path: string;
  readonly label: string;
  readonly text: string;
}

/** Other sets of sizes that meet the aims as well. */
export interface FamilyView {
  readonly heading: string;
  readonly intro: string;
  /** Each a size for every wanted dimension. */
  readonly members: readonly (readonly SizeText[])[];
  /** How two of them move together, as markup of our own components; absent where fewer move. */
  readonly picture?: string;
}

/** What came of looking for the sizes that are to be found. */
export interface SolutionView {
  readonly state: Solution["state"];
  /** What came of it, and where there is no solution why. */
  readonly lead: readonly LineView[];
  /** Entries without which there is no solution, or on which no aim rests. */
  readonly needs?: readonly string[];
  /** Sizes that meet the aims, to be taken; none where there is no solution. */
  readonly found: readonly SizeText[];
  /** The sizes, as found or as they come nearest, and what the aims come to. */
  readonly sizes?: Part;
  readonly aims?: Part;
  /** Where all aims are bounds: between which sizes each dimension meets them. */
  readonly ranges?: Part;
  readonly family?: FamilyView;
  /** How the build stands with the sizes, and the rules that fail or are open then. */
  readonly standing?: { readonly lead: DocumentView["lead"]; readonly findings: readonly ItemView[] };
}

interface Part {
  readonly heading: string;
  readonly intro?: string;
  readonly items: readonly ItemView[];
}

/** One change that would make a finding hold. */
export interface RemedyItem {
  readonly path: string;
  readonly label: string;
  /** The kind of work. */
  readonly work: string;
  /** As it stands now, and how that is known. */
  readonly was: string;
  readonly provenance: Provenance;
  /** What it would be; absent where it was measured place by place. */
  readonly text?: string;
  /** By how much it moves. */
  readonly by: string;
  /** What else it does, and what one step less would do. */
  readonly beside: readonly string[];
}

/** What came of looking for what would make one finding hold. */
export interface RemedyView {
  /** Absent: the rule neither fails nor is open. */
  readonly state?: FindingRemedies["state"];
  readonly head: LineView;
  readonly measure: readonly LineView[];
  readonly remedies: readonly RemedyItem[];
  /** Why others do not do. */
  readonly not: readonly LineView[];
  /** What is taken for granted, and who must allow it. */
  readonly terms: string;
  readonly caution: string;
}

/** What the worker is asked. */
export type ToChoose = { readonly ground: ChoosingGround } & (
  | { readonly kind: "find" }
  | { readonly kind: "mend"; readonly rule: string }
);

export type FromChoosing =
  | { readonly kind: "finding"; readonly phase: SolvePhase }
  | { readonly kind: "found"; readonly view: SolutionView }
  | { readonly kind: "mending"; readonly progress: RemedyProgress }
  | { readonly kind: "mended"; readonly view: RemedyView };
