import type { MeasuringPlan } from "trialfit/papers";
import type { SizeText } from "../choosingProtocol.ts";
import type { PairView } from "../pairProtocol.ts";
import type { Entry, JudgeOptions, Places, ReportView, Taking, Trouble } from "../protocol.ts";
import { History } from "./History.ts";

/** Sizes that were found and put into the build as one change. */
export interface Put {
  /** What the change is called when it is undone. */
  readonly by: string;
  readonly sizes: readonly SizeText[];
  /** The finding that they are to make hold. */
  readonly rule?: { readonly id: string; readonly title: string };
}

/** A build that stands beside the one on the bench, or can. */
export interface Beside {
  readonly text: string;
  /** Where it comes from, in words. */
  readonly from: string;
  /** The same of the build that it changed places with. */
  readonly back?: string;
}

/** What the page knows of the build on the bench. */
export interface BenchState {
  readonly history: History;
  readonly name: string;
  readonly entries: Readonly<Record<string, Entry>>;
  readonly places: Places;
  readonly troubles: readonly Trouble[];
  readonly report: ReportView | undefined;
  /** Whether the report is the one of the first demo that was made with the site, not one of the evaluator here. */
  readonly foreseen: boolean;
  /** Whether the report belongs to the file as it is, with nothing still being worked out. */
  readonly done: boolean;
  /** Time to the first report, and to the one with every verdict [ms]. */
  readonly first: number;
  readonly took: number;
  readonly options: JudgeOptions;
  /** The build that stands beside this one. */
  readonly beside: Beside | undefined;
  /** States that were kept, the latest first. */
  readonly kept: readonly Beside[];
  /** Both side by side, as they were compared last. */
  readonly pair: PairView | undefined;
  /** Whether that is about both as they are now. */
  readonly paired: boolean;
  /** What is to be measured, once somebody asked. */
  readonly plan: MeasuringPlan | undefined;
  /** What came of readings, by their place in the engine. */
  readonly takings: Readonly<Record<string, Taking>>;
  /** What came of the last sheet, and its name. */
  readonly sheet: (Taking & { readonly file: string }) | undefined;
  readonly failure: string | undefined;
  /** Why something that was to be opened was not. */
  readonly refused: string | undefined;
  /** What was put in last. */
  readonly put: Put | undefined;
}

/** Before anything was opened. */
export const emptyBench: BenchState = {
  history: new History(),
  name: "",
  entries: {},
  places: {},
  troubles: [],
  report: undefined,
  foreseen: false,
  done: false,
  first: 0,
  took: 0,
  options: {},
  beside: undefined,
  kept: [],
  pair: undefined,
  paired: false,
  plan: undefined,
  takings: {},
  sheet: undefined,
  failure: undefined,
  refused: undefined,
  put: undefined,
};
