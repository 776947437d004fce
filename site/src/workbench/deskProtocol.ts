import type {
  Gate,
  GatedLine,
  Limits,
  Override,
  PaperProgress,
  PaperSize,
  UnitChoice,
} from "trialfit/papers";
import type { FromChoosing, ToChoose } from "./choosingProtocol.ts";
import type { FromTrace, ToTrace } from "./traceProtocol.ts";

/** Which papers are written, and how. */
export interface PaperOrder {
  readonly only: readonly string[];
  readonly units: UnitChoice;
  readonly size: PaperSize;
  readonly revision: string;
  /** The day, `2026-03-14`. */
  readonly date: string;
  /** What is let pass, by the name of a paper or of a line of one. */
  readonly passed: Readonly<Record<string, Override>>;
}

/** The build file that papers are written from, and what it is judged by. */
export interface PaperGround {
  readonly text: string;
  readonly file: string;
  readonly set?: string | undefined;
  /** The file of the state before. */
  readonly before?: string | undefined;
}

/** A paper as files. */
export interface WrittenPaper {
  readonly id: string;
  readonly title: string;
  readonly gate?: Gate;
  readonly lines?: readonly GatedLine[];
  readonly html: string;
  readonly markdown: string;
}

/** A set of papers as files, as the command writes them. */
export interface WrittenSet {
  readonly papers: readonly WrittenPaper[];
  /** All of them on one page. */
  readonly html: string;
  /** The measurement sheet as a table file, where it was asked for. */
  readonly sheet?: string;
  /** The record of the engine, where it was asked for. */
  readonly record?: string;
}

/** What is asked of papers. */
export type ToPapers = { readonly ground: PaperGround } & (
  | { readonly kind: "write"; readonly order: PaperOrder }
  | { readonly kind: "limits"; readonly path: string; readonly units: UnitChoice }
);

/** What takes its time, by its kind. */
export type DeskWork = (ToPapers | ToChoose | ToTrace)["kind"];

/** To the worker that does it; `errand` is counted up by the page. A newer one of the same kind ends an older. */
export type ToDesk = { readonly errand: number } & (
  | ToPapers
  | ToChoose
  | ToTrace
  /** End what was asked for last of that kind. */
  | { readonly kind: "leave"; readonly of: DeskWork }
);

export type FromDesk = { readonly errand: number } & (
  | FromChoosing
  | FromTrace
  | { readonly kind: "progress"; readonly progress: PaperProgress }
  | { readonly kind: "written"; readonly written: WrittenSet }
  /** Absent limits: the sheet does not ask for the dimension. */
  | { readonly kind: "limits"; readonly path: string; readonly limits: Limits | undefined }
  | { readonly kind: "failed"; readonly message: string }
);
