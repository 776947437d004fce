import { useCallback, useEffect, useLayoutEffect, useMemo, useReducer, useRef } from "preact/hooks";
import type { MeasuringPlan, SheetRow, UnitChoice } from "trialfit/papers";
import { startWorker } from "../../worker/startWorker.ts";
import type { SizeText } from "../choosingProtocol.ts";
import type { PairView } from "../pairProtocol.ts";
import type {
  Entry,
  FromWorker,
  JudgeOptions,
  Places,
  ReportView,
  Taking,
  ToWorker,
  Trouble,
} from "../protocol.ts";
import { History } from "./History.ts";
import { keepBuild, leaveBuild } from "./keptBuilds.ts";
import { placeKey } from "./placeKey.ts";
import { Runs } from "./Runs.ts";
import { UnpackReport } from "./UnpackReport.ts";

/** Sizes that were found and put into the build as one change. */
export interface Put {
  /** What the change is called when it is undone. */
  readonly by: string;
  readonly sizes: readonly SizeText[];
  /** The finding that they are to make hold. */
  readonly rule?: { readonly id: string; readonly title: string };
}

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

/** A build that stands beside the one on the bench, or can. */
export interface Beside {
  readonly text: string;
  /** Where it comes from, in words. */
  readonly from: string;
  /** The same of the build that it changed places with. */
  readonly back?: string;
}

/** What was changed, and with which other changes that is one step of undoing. */
interface Reason {
  readonly by: string;
  readonly run: number;
}

type Act =
  | { readonly kind: "told"; readonly message: Told; readonly reason: Reason | undefined }
  | { readonly kind: "busy"; readonly other: boolean }
  | { readonly kind: "foreseen"; readonly view: ReportView }
  | { readonly kind: "refused"; readonly because: string }
  | { readonly kind: "history"; readonly history: History }
  | { readonly kind: "options"; readonly options: JudgeOptions }
  | { readonly kind: "beside"; readonly beside: Beside | undefined }
  | { readonly kind: "keep"; readonly beside: Beside }
  | { readonly kind: "put"; readonly put: Put };

/** What a swap is called when it is undone. */
const SWAP = "swapping the two builds";
/** So many kept states can be chosen. */
const MOST_KEPT = 8;

/** The build of a text that stands beside another one after both changed places. */
const swapped = (text: string, { from, back = "from the bench" }: Beside): Beside => ({
  text,
  from: back,
  back: from,
});

const empty: BenchState = {
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

function reduce(state: BenchState, act: Act): BenchState {
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

/** What the page can do with the build. */
export interface BenchActions {
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

/** A message to the worker, before it is counted. */
type Order = ToWorker extends infer One ? (One extends ToWorker ? Omit<One, "revision"> : never) : never;

/** The build on the bench, read and judged in a worker. */
export function useBench(): readonly [BenchState, BenchActions] {
  const [state, dispatch] = useReducer(reduce, empty);
  const worker = useRef<Worker | undefined>(undefined);
  const revision = useRef(0);
  const reasons = useRef(new Map<number, Reason>());
  const runs = useRef(new Runs());
  const sent = useRef(0);
  const latest = useRef(state);
  latest.current = state;

  useEffect(() => {
    const made = startWorker();
    const packing = new UnpackReport();
    made.addEventListener("message", ({ data: sentBy }: MessageEvent<FromWorker>) => {
      // Reports rest on those before: one that comes too late is unpacked all the same.
      const data = sentBy.kind === "report" ? { ...sentBy, view: packing.unpack(sentBy.view) } : sentBy;
      if (data.revision < revision.current && data.kind !== "text" && data.kind !== "taken") return;
      dispatch({ kind: "told", message: data, reason: reasons.current.get(data.revision) });
      if (data.kind !== "text") return;
      reasons.current.delete(data.revision);
      if (data.text !== "") keepBuild(data.text);
    });
    worker.current = made;
    return () => made.terminate();
  }, []);

  const send = useCallback((order: Order, by = "") => {
    revision.current += 1;
    sent.current = performance.now();
    reasons.current.set(revision.current, { by, run: runs.current.next(by, sent.current) });
    dispatch({ kind: "busy", other: order.kind === "open" });
    worker.current?.postMessage({ ...order, revision: revision.current });
  }, []);

  // Where a browser shows its own measurements: from what was typed to the verdicts that stand on the page.
  useLayoutEffect(() => {
    const { report, foreseen, done } = latest.current;
    if (report === undefined) return;
    const name = done
      ? "all that is said"
      : foreseen || report.counts.pending > 0
        ? "verdicts"
        : "all verdicts";
    performance.measure(name, { start: sent.current });
  }, [state.report]);

  const actions = useMemo((): BenchActions => {
    const compare = (beside: Beside | undefined) => {
      dispatch({ kind: "beside", beside });
      send({ kind: "hold", text: beside?.text });
    };
    const go = (history: History, swaps: boolean) => {
      const { history: before, beside } = latest.current;
      if (history === before || history.text === undefined) return;
      dispatch({ kind: "history", history });
      send({ kind: "open", text: history.text, file: "build.yaml" });
      // A swap is taken back whole: what stood on the bench is what then stands beside it.
      if (swaps && beside?.text === history.text && before.text !== undefined)
        compare(swapped(before.text, beside));
    };
    return {
      open: (text, file, by) => {
        if (latest.current.history.text !== undefined) leaveBuild();
        send({ kind: "open", text, file }, by);
      },
      rewrite: (text) => send({ kind: "open", text, file: "build.yaml" }, "the file"),
      refuse: (because) => dispatch({ kind: "refused", because }),
      foresee: (view) => {
        if (revision.current === 1 && latest.current.report === undefined)
          dispatch({ kind: "foreseen", view });
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
        const { text } = latest.current.history;
        if (text === undefined) return;
        const beside = { text, from: `kept at ${new Date().toLocaleTimeString("en-GB")}` };
        dispatch({ kind: "keep", beside });
        compare(beside);
      },
      swap: () => {
        const { beside, history } = latest.current;
        if (beside === undefined || history.text === undefined) return;
        compare(swapped(history.text, beside));
        send({ kind: "open", text: beside.text, file: "build.yaml" }, SWAP);
      },
      measure: (units) => send({ kind: "measure", units }),
      take: (row) => send({ kind: "take", row }, `the reading ${row.reading} of ${placeKey(row)}`),
      sheet: (text, file) => send({ kind: "sheet", text, file }, `the readings of ${file}`),
      undo: () => {
        const { history } = latest.current;
        go(history.undo(), history.last === SWAP);
      },
      redo: () => {
        const history = latest.current.history.redo();
        go(history, history.last === SWAP);
      },
      settle: () => runs.current.end(),
    };
  }, [send]);
  return [state, actions];
}
