import type { Report } from "../report/Report.ts";
import type { Evaluation } from "./Evaluation.ts";
import { BREATH, takeBreath } from "./takeBreath.ts";

/** What an `AbortSignal` tells. */
export interface StopSignal {
  readonly aborted: boolean;
  readonly reason?: unknown;
}

/** A report by what is known so far. */
export interface Refinement {
  readonly report: Report;
  /**
   * Ids of rules that are not done: not judged yet (those are not among the verdicts of the report), or open without
   * what would settle them. The last refinement has none, and its report no `pending`.
   */
  readonly pending: readonly string[];
}

/**
 * Work before the first report [ms]: what is remembered or cheap. A person who types must not wait for more, nor for a
 * first report where the last one would follow at once: each costs its making and its drawing.
 */
const FIRST = 16;
/** Time between two reports [ms]: a report costs some milliseconds itself. */
const BETWEEN_REPORTS = 150;

async function refinementOf(evaluation: Evaluation): Promise<Refinement> {
  const report = await evaluation.report();
  const { rules = [], settlements = [] } = report.pending ?? {};
  return { report, pending: [...rules.map(({ rule }) => rule), ...settlements] };
}

/**
 * Reports of an evaluation while it goes on: the first as soon as what is remembered from builds before and what is
 * cheap was judged, others while the rest is worked out, the last when all is. Between them others have their turn at
 * least every tenth of a second, unless a single value takes longer.
 * @param begin makes the evaluation
 * @param signal ends it at the next breath; what was derived by then is kept
 * @throws what `begin` throws, before the first report; the reason of the signal when it was aborted
 */
export async function* refine(
  begin: () => Evaluation,
  signal: StopSignal | undefined,
): AsyncGenerator<Refinement, void, void> {
  let begun = Date.now();
  let reported: { readonly at: number; readonly found: number } | undefined;
  // Between two pieces of the work something is whole, the verdicts first of all: that is not kept waiting.
  let whole = false;
  const evaluation = begin();
  for await (const steps of evaluation.work()) {
    while (steps.next().done !== true) {
      if (Date.now() - begun < (reported === undefined ? FIRST : BREATH)) continue;
      const { found } = evaluation;
      const late = whole || Date.now() - (reported?.at ?? 0) > BETWEEN_REPORTS;
      if (reported === undefined || (found > reported.found && late)) {
        yield await refinementOf(evaluation);
        whole = false;
        reported = { at: Date.now(), found: evaluation.found };
      }
      await takeBreath();
      if (signal?.aborted === true) throw signal.reason;
      begun = Date.now();
    }
    whole = true;
  }
  yield await refinementOf(evaluation);
}
