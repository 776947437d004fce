import type { FromWorker, JudgeOptions, ReportView } from "../protocol.ts";
import type { BenchState, Beside, Put } from "./BenchState.ts";
import type { History } from "./History.ts";
import { placeKey } from "./placeKey.ts";

/** What was changed, and with which other changes that is one step of undoing. */
export interface Reason {
  readonly by: string;
  readonly run: number;
}

/** What happened on the page, or was told by the worker. */
export type Act =
  | { readonly kind: "told"; readonly message: Told; readonly reason: Reason | undefined }
  | { readonly kind: "busy"; readonly other: boolean }
  | { readonly kind: "foreseen"; readonly view: ReportView }
  | { readonly kind: "refused"; readonly because: string }
  | { readonly kind: "history"; readonly history: History }
  | { readonly kind: "options"; readonly options: JudgeOptions }
  | { readonly kind: "beside"; readonly beside: Beside | undefined }
  | { readonly kind: "keep"; readonly beside: Beside }
  | { readonly kind: "put"; readonly put: Put };

/** So many kept states can be chosen. */
const MOST_KEPT = 8;

/** What the worker told, its reports whole. */
type Told = Exclude<FromWorker, { kind: "report" }> | Unpacked;
type Unpacked = Omit<Extract<FromWorker, { kind: "report" }>, "view"> & { readonly view: ReportView };

function told(state: BenchState, message: Told, reason: Reason | undefined): BenchState {
  switch (message.kind) {
    case "text": {
      const { text, name, entries, places, troubles } = message;
      const history = text === "" ? state.history : state.history.push(text, reason?.by ?? "", reason?.run);
      return { ...state, history, name, entries, places, troubles };
    }
    case "report": {
      const { view, done, first, took } = message;
      // A part of what already stands there whole tells nothing.
      if (state.foreseen && !done) return state;
      return { ...state, report: view, foreseen: false, done, first, took, failure: undefined };
    }
    case "unread":
      return { ...state, report: undefined, foreseen: false, pair: undefined, done: true };
    case "pair":
      return { ...state, pair: message.view, paired: true };
    case "plan":
      return { ...state, plan: message.plan };
    case "taken": {
      const { of, taking } = message;
      if (typeof of === "string") return { ...state, sheet: { ...taking, file: of } };
      return { ...state, takings: { ...state.takings, [placeKey(of)]: taking } };
    }
    case "failed":
      return { ...state, report: undefined, foreseen: false, done: true, failure: message.message };
  }
}

/** The state after something happened. */
export function reduceBench(state: BenchState, act: Act): BenchState {
  switch (act.kind) {
    case "told":
      return told(state, act.message, act.reason);
    case "busy":
      return {
        ...state,
        done: false,
        foreseen: false,
        paired: false,
        refused: undefined,
        ...(act.other ? { takings: {}, sheet: undefined } : {}),
      };
    case "foreseen":
      return { ...state, report: act.view, foreseen: true };
    case "refused":
      return { ...state, refused: act.because };
    case "history":
      return { ...state, history: act.history };
    case "options":
      return { ...state, options: act.options };
    case "beside":
      return { ...state, beside: act.beside, pair: act.beside && state.pair };
    case "keep":
      return { ...state, kept: [act.beside, ...state.kept].slice(0, MOST_KEPT) };
    case "put":
      return { ...state, put: act.put };
  }
}
