import { describeProblem, formatProblem, InputError, type Report, refineBuild } from "trialfit";
import type { TakenSheet, UnitChoice } from "trialfit/papers";
import type { FromWorker, JudgeOptions, Taking, ToWorker } from "../protocol.ts";
import { BenchText } from "./BenchText.ts";
import type { OtherBuild } from "./OtherBuild.ts";
import { PackReport } from "./PackReport.ts";
import { viewReport } from "./viewReport.ts";

/** Why the judging of an older state ends. */
const OUTDATED = new Error("a newer state of the build has come");

const loadMeasuring = () => import("./measure.ts");
const loadOther = () => import("./OtherBuild.ts");

/** What readings are asked to be taken by. */
type ToTake = Extract<ToWorker, { kind: "take" | "sheet" }>;

type Post = (message: FromWorker) => void;

/**
 * The build on the bench: read and judged anew with every change, a newer change before an older. An entry that is
 * typed is read alone and judged at once; the text of the file follows.
 */
export class Bench {
  private readonly post: Post;
  private readonly sheet = new BenchText();
  private options: JudgeOptions = {};
  /** The file of the build that stands beside this one. */
  private held: string | undefined;
  /** The same, once it was read. */
  private other: OtherBuild | undefined;
  private stop = new AbortController();
  /** Of the page's state that is told last: judged is always what is newest. */
  private revision = 0;
  /** Units of what is to be measured; absent as long as nobody measures. */
  private measuring: UnitChoice | undefined;
  /** The last report of all of the build on the bench; undefined after another was opened. */
  private whole: Report | undefined;
  private readonly packing = new PackReport();

  constructor(post: Post) {
    this.post = post;
  }

  /** Does what the page asks; answers come through `post`, with the revision that was asked for. */
  async take(message: ToWorker): Promise<void> {
    this.stop.abort(OUTDATED);
    const { revision } = message;
    this.revision = revision;
    try {
      if (message.kind === "take" || message.kind === "sheet") await this.takeIn(message);
      else this.change(message);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      const path = "path" in message ? message.path : "";
      const wrong = error.problems.map((problem) => ({
        path,
        line: problem.line,
        text: describeProblem(problem),
      }));
      this.tell(revision, wrong);
      return;
    }
    // While readings waited for what takes them in, something newer may have begun to judge without them.
    this.stop.abort(OUTDATED);
    this.stop = new AbortController();
    try {
      await this.judge(this.revision, this.stop.signal, performance.now(), message.kind === "open");
    } catch (error) {
      if (error !== OUTDATED) throw error;
    }
  }

  private change(message: Exclude<ToWorker, ToTake>): void {
    switch (message.kind) {
      case "open":
        this.whole = undefined;
        this.sheet.open(message.text, message.file);
        break;
      case "write":
        this.sheet.write(message.path, message.entry);
        break;
      case "put":
        this.sheet.put(message.sizes);
        break;
      case "convert":
        this.sheet.convert(message.path, message.unit);
        break;
      case "judge":
        this.options = message.options;
        break;
      case "measure":
        this.measuring = message.units;
        break;
      case "hold":
        this.held = message.text;
        this.other = undefined;
    }
  }

  /** Takes readings into the text. Nothing of it happens before what takes them in was fetched. */
  private async takeIn(message: ToTake): Promise<void> {
    const { takeReadings, takeRows } = await loadMeasuring();
    const { revision } = message;
    const { text: before, file } = this.sheet;
    const of = message.kind === "take" ? message.row : message.file;
    const tell = (taking: Taking) => this.post({ kind: "taken", revision, of, taking });
    let sheet: TakenSheet;
    try {
      sheet =
        message.kind === "take"
          ? takeRows(before, file, [{ line: 1, row: message.row }], "the reading", "")
          : takeReadings(before, file, message.text, message.file);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      tell({ taken: [], known: 0, refused: error.problems.map(formatProblem) });
      return;
    }
    const { text, taken, known, refused } = sheet;
    this.sheet.open(text, file);
    tell({
      taken: taken.map(({ label, text: reading, instead }) => ({
        label,
        text: reading,
        ...(instead === undefined ? {} : { instead }),
      })),
      known,
      refused: refused.map(message.kind === "take" ? describeProblem : formatProblem),
    });
  }

  private tell(revision: number, troubles = this.sheet.troubles): void {
    const { text, build, entries, places } = this.sheet;
    this.post({ kind: "text", revision, text, name: build?.name ?? "", entries, places, troubles });
  }

  /** @param opened whether it is another build: its form is filled before the first verdicts, which take the longest */
  private async judge(revision: number, signal: AbortSignal, begun: number, opened: boolean): Promise<void> {
    const { build } = this.sheet;
    if (build === undefined) {
      this.tell(revision);
      this.post({ kind: "unread", revision });
      return;
    }
    if (opened) this.tell(revision);
    const { stage, set } = this.options;
    const options = {
      ...(stage === undefined ? {} : { stage }),
      ...(set === undefined ? {} : { sets: [set] }),
    };
    let first: number | undefined;
    let all: number | undefined;
    let last: Report | undefined;
    for await (const { report, pending } of refineBuild(build, { ...options, signal })) {
      const view = this.packing.pack(viewReport(report));
      const took = performance.now() - begun;
      first ??= took;
      if (view.counts.pending === 0) all ??= took;
      last = report;
      this.post({ kind: "report", revision, view, done: pending.length === 0, first, took: all ?? took });
      if (first !== took) continue;
      if (!opened) this.tell(revision);
      await this.plan(revision);
    }
    if (this.held !== undefined && last !== undefined) {
      const { OtherBuild: Other } = await loadOther();
      signal.throwIfAborted();
      this.other ??= new Other(this.held);
      const view = await this.other.beside(build, last, this.options, signal);
      this.post({ kind: "pair", revision, view });
    }
    if (this.measuring === undefined) return;
    const { stage: _, ...everyStage } = options;
    if (stage !== undefined)
      for await (const { report } of refineBuild(build, { ...everyStage, signal })) last = report;
    this.whole = last;
    await this.plan(revision);
  }

  /** Tells what is to be measured, by the last report of the whole build. */
  private async plan(revision: number): Promise<void> {
    const { measuring: units, whole } = this;
    const { build, text } = this.sheet;
    if (build === undefined || units === undefined || whole === undefined) return;
    const { set } = this.options;
    const { measuringPlan } = await loadMeasuring();
    const plan = measuringPlan(text, build, whole, { units, ...(set === undefined ? {} : { sets: [set] }) });
    this.post({ kind: "plan", revision, plan });
  }
}
