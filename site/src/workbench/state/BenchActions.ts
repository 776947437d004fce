import type { SheetRow, UnitChoice } from "trialfit/papers";
import type { Entry, JudgeOptions, ReportView } from "../protocol.ts";
import type { Beside, Put } from "./BenchState.ts";

/** What the page can do with the build. */
export interface BenchActions {
  /** Puts the build on the bench with which the page begins. @returns whether it did: somebody may have been quicker */
  start(text: string, by: string): boolean;
  /** Puts another build on the bench; that which was there stays kept. @param by what this is called when it is undone */
  open(text: string, file: string, by: string): void;
  /** Puts what was written into the text of the build on the bench. */
  rewrite(text: string): void;
  /** Says why something was not opened. */
  refuse(because: string): void;
  /** Shows the report of the build that was just opened, from before; nothing where the evaluator was sooner. */
  foresee(view: ReportView): void;
  write(path: string, entry: Entry | undefined): void;
  put(put: Put): void;
  convert(path: string, unit: string): void;
  judge(options: JudgeOptions): void;
  /** Puts a build beside the one on the bench, in place of what stood there; nothing stops comparing. */
  compare(beside: Beside | undefined): void;
  /** Keeps the build as it is now, and puts that beside what becomes of it. */
  keep(): void;
  /** Puts each of both builds in the other's place. */
  swap(): void;
  /** Asks what is to be measured, and goes on being told. */
  measure(units: UnitChoice): void;
  take(row: SheetRow): void;
  sheet(text: string, file: string): void;
  undo(): void;
  redo(): void;
  /** What is changed next is a step of its own. */
  settle(): void;
}
