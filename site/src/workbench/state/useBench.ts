import { useCallback, useEffect, useLayoutEffect, useMemo, useReducer, useRef } from "preact/hooks";
import { startWorker } from "../../worker/startWorker.ts";
import type { FromWorker, ToWorker } from "../protocol.ts";
import { actionsOf, type Order } from "./actionsOf.ts";
import type { BenchActions } from "./BenchActions.ts";
import { type BenchState, emptyBench } from "./BenchState.ts";
import { keepBuild } from "./keptBuilds.ts";
import { Runs } from "./Runs.ts";
import { type Reason, reduceBench } from "./reduceBench.ts";
import { UnpackReport } from "./UnpackReport.ts";

/** The build on the bench, read and judged in a worker. */
export function useBench(): readonly [BenchState, BenchActions] {
  const [state, dispatch] = useReducer(reduceBench, emptyBench);
  const worker = useRef<Worker | undefined>(undefined);
  /** What was asked before the worker was there. */
  const waiting = useRef<ToWorker[]>([]);
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
    for (const message of waiting.current.splice(0)) made.postMessage(message);
    return () => made.terminate();
  }, []);

  const send = useCallback((order: Order, by = "") => {
    revision.current += 1;
    sent.current = performance.now();
    reasons.current.set(revision.current, { by, run: runs.current.next(by, sent.current) });
    dispatch({ kind: "busy", other: order.kind === "open" });
    const message: ToWorker = { ...order, revision: revision.current };
    if (worker.current === undefined) waiting.current.push(message);
    else worker.current.postMessage(message);
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

  const actions = useMemo(
    () =>
      actionsOf({
        state: () => latest.current,
        revision: () => revision.current,
        dispatch,
        send,
        endRun: () => runs.current.end(),
      }),
    [send],
  );
  return [state, actions];
}
