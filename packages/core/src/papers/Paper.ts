/** A number on a paper, with where it comes from: what is printed can be held to what was evaluated. */
export interface NumberPiece {
  readonly kind: "number";
  /** Field path, quantity id, or `rule limit` for a limit. */
  readonly of: string;
  /** SI. */
  readonly value: number;
  readonly text: string;
}

/** A place to write in. */
export interface BlankPiece {
  readonly kind: "blank";
  /** What belongs there, for those who cannot see the line: `Bore, cylinder 3, mm`. */
  readonly label: string;
  readonly unit?: string;
  readonly wide?: boolean;
}

/** A box to tick. */
export interface TickPiece {
  readonly kind: "tick";
  readonly label: string;
}

export type Piece = string | NumberPiece | BlankPiece | TickPiece;
export type Cell = readonly Piece[];

export interface PaperTable {
  readonly kind: "table";
  /** Read out and printed as the head of the columns; an empty one is not allowed. */
  readonly columns: readonly string[];
  /** Shares of the width, one for each column. Absent: by what stands in them. */
  readonly widths?: readonly number[];
  readonly rows: readonly (readonly Cell[])[];
}

/** Places to write in, in rows and columns: positions across, heights and directions down. */
export interface PaperGrid {
  /** What the columns are: `cylinder`. */
  readonly corner: string;
  readonly columns: readonly string[];
  readonly rows: readonly { readonly name: string; readonly cells: readonly Cell[] }[];
}

/** A step or a point, with what belongs to it. */
export interface PaperStep {
  readonly title: string;
  /** True where the work stops until it is ticked. */
  readonly hold?: boolean;
  readonly lines: readonly Cell[];
  readonly grid?: PaperGrid;
  /** Shown at the step, where the hand is. */
  readonly cautions?: readonly string[];
}

export interface PaperSteps {
  readonly kind: "steps";
  /** Whether their order matters. */
  readonly ordered: boolean;
  readonly steps: readonly PaperStep[];
}

export interface PaperSection {
  readonly heading: string;
  readonly intro?: string;
  readonly cautions?: readonly string[];
  readonly body: PaperTable | PaperSteps;
}

/** Why a paper, or a line of one, may not be used yet, and who let it pass all the same. */
export interface Gate {
  /** What is waited for, in words; empty when open. */
  readonly waitsFor: readonly string[];
  readonly override?: Override;
}

/** A person lets something pass that waits. */
export interface Override {
  readonly by: string;
  readonly because: string;
}

/** A line of a paper that waits for something by itself. */
export interface GatedLine {
  /** The name under which it is let pass: `order-list piston`. */
  readonly pass: string;
  readonly label: string;
  readonly gate: Gate;
}

export interface Paper {
  readonly id: string;
  readonly title: string;
  /** What it is for and who uses it, in one sentence. */
  readonly purpose: string;
  readonly gate?: Gate;
  /** Where single lines are held or released, not the paper as a whole. */
  readonly lines?: readonly GatedLine[];
  readonly sections: readonly PaperSection[];
  /** Lines to sign, by what the signature says. */
  readonly signatures: readonly string[];
}

/** What stands at the head of every page of a set of papers. */
export interface PaperHead {
  readonly build: string;
  readonly revision: string;
  /** The day, `2026-03-14`. */
  readonly date: string;
  /** First figures of the hash of the build. */
  readonly hash: string;
  /** Version of trialfit and of its rules, and the set judged with. */
  readonly rules: string;
}

export interface PaperSet {
  readonly head: PaperHead;
  readonly papers: readonly Paper[];
}
