import type { ToWorker } from "../protocol.ts";
import type { BenchActions } from "./BenchActions.ts";
import type { BenchState, Beside } from "./BenchState.ts";
import type { History } from "./History.ts";
import { leaveBuild } from "./keptBuilds.ts";
import { placeKey } from "./placeKey.ts";
import type { Act } from "./reduceBench.ts";

/** A message to the worker, before it is counted. */
export type Order = ToWorker extends infer One
  ? One extends ToWorker
    ? Omit<One, "revision">
    : never
  : never;

/** What a swap is called when it is undone. */
const SWAP = "swapping the two builds";
/** The build of a text that stands beside another one after both changed places. */
const swapped = (text: string, { from, back = "from the bench" }: Beside): Beside => ({
  text,
  from: back,
  back: from,
});

/** What actions work with. */
interface Means {
  /** The state as it is now. */
  readonly state: () => BenchState;
  /** How many messages were sent to the worker. */
  readonly revision: () => number;
  readonly dispatch: (act: Act) => void;
  /** Sends a message to the worker. @param by what the change is called when it is undone */
  readonly send: (order: Order, by?: string) => void;
  /** What is changed next is a step of its own. */
  readonly endRun: () => void;
}

/** What can be done with the build on the bench, each as a message to the worker that judges it. */
export function actionsOf({ state, revision, dispatch, send, endRun }: Means): BenchActions {
  const compare = (beside: Beside | undefined) => {
    dispatch({ kind: "beside", beside });
    send({ kind: "hold", text: beside?.text });
  };
  const go = (history: History, swaps: boolean) => {
    const { history: before, beside } = state();
    if (history === before || history.text === undefined) return;
    dispatch({ kind: "history", history });
    send({ kind: "open", text: history.text, file: "build.yaml" });
    // A swap is taken back whole: what stood on the bench is what then stands beside it.
    if (swaps && beside?.text === history.text && before.text !== undefined)
      compare(swapped(before.text, beside));
  };
  return {
    start: (text, by) => {
      const isFirst = revision() === 0;
      if (isFirst) send({ kind: "open", text, file: "build.yaml" }, by);
      return isFirst;
    },
    open: (text, file, by) => {
      leaveBuild();
      send({ kind: "open", text, file }, by);
    },
    rewrite: (text) => send({ kind: "open", text, file: "build.yaml" }, "the file"),
    refuse: (because) => dispatch({ kind: "refused", because }),
    foresee: (view) => {
      if (revision() === 1 && state().report === undefined) dispatch({ kind: "foreseen", view });
    },
    write: (path, entry) => send({ kind: "write", path, entry }, path),
    put: (put) => {
      dispatch({ kind: "put", put });
      send({ kind: "put", sizes: put.sizes }, put.by);
    },
    convert: (path, unit) => send({ kind: "convert", path, unit }, `unit of ${path}`),
    judge: (options) => {
      dispatch({ kind: "options", options });
      send({ kind: "judge", options });
    },
    compare,
    keep: () => {
      const { text } = state().history;
      if (text === undefined) return;
      const beside = { text, from: `kept at ${new Date().toLocaleTimeString("en-GB")}` };
      dispatch({ kind: "keep", beside });
      compare(beside);
    },
    swap: () => {
      const { beside, history } = state();
      if (beside === undefined || history.text === undefined) return;
      compare(swapped(history.text, beside));
      send({ kind: "open", text: beside.text, file: "build.yaml" }, SWAP);
    },
    measure: (units) => send({ kind: "measure", units }),
    take: (row) => send({ kind: "take", row }, `the reading ${row.reading} of ${placeKey(row)}`),
    sheet: (text, file) => send({ kind: "sheet", text, file }, `the readings of ${file}`),
    undo: () => {
      const { history } = state();
      go(history.undo(), history.last === SWAP);
    },
    redo: () => {
      const history = state().history.redo();
      go(history, history.last === SWAP);
    },
    settle: () => endRun(),
  };
}
