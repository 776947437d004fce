import {
  type Build,
  type BuildEdit,
  countPositions,
  describeProblem,
  editBuildText,
  fields,
  formatProblem,
  InputError,
  type PositionKind,
  parseSource,
  positionKinds,
  type Report,
  refineBuild,
  syntaxOf,
  withField,
} from "trialfit";
import type { TakenSheet, UnitChoice } from "trialfit/papers";
import type {
  Entry,
  FromWorker,
  JudgeOptions,
  Pieces,
  Places,
  Taking,
  ToWorker,
  Trouble,
} from "../protocol.ts";
import type { OtherBuild } from "./OtherBuild.ts";
import { PackReport } from "./PackReport.ts";
import { Rescaling } from "./Rescaling.ts";
import { readEntries } from "./readEntries.ts";
import { readWhatCan } from "./readWhatCan.ts";
import { resized } from "./resized.ts";
import { isNumberAlone, typedWhole } from "./typedWhole.ts";
import { viewReport } from "./viewReport.ts";
import { writeEntry } from "./writeEntry.ts";

/** Why the judging of an older state ends. */
const OUTDATED = new Error("a newer state of the build has come");

const loadMeasuring = () => import("./measure.ts");
const loadOther = () => import("./OtherBuild.ts");

/** What readings are asked to be taken by. */
type ToTake = Extract<ToWorker, { kind: "take" | "sheet" }>;

/** An entry of the form with what was typed whole into the box of a number taken apart, where that can be. */
function understood(path: string, entry: Entry | undefined): Entry | undefined {
  const spec = fields.get(path)?.spec;
  if (entry === undefined || spec?.kind !== "dimension") return entry;
  const whole = (pieces: Pieces) => typedWhole(pieces, syntaxOf(spec)) ?? pieces;
  if (entry.form === "pieces") return whole(entry);
  if (entry.form !== "readings" || entry.beside?.form !== "pieces") return entry;
  return { ...entry, beside: whole(entry.beside) };
}

type Post = (message: FromWorker) => void;

/**
 * The build on the bench: read and judged anew with every change, a newer change before an older. An entry that is
 * typed is read alone and judged at once; the text of the file follows.
 */
export class Bench {
  private readonly post: Post;
  private text = "";
  private file = "build.yaml";
  private build: Build | undefined;
  private troubles: readonly Trouble[] = [];
  private entries: Readonly<Record<string, Entry>> = {};
  /** What was typed into the boxes of numbers and is not understood, by path: it stays there until it is changed. */
  private readonly typed = new Map<string, Pieces>();
  /** Entries that are read, but not in the text yet. */
  private unwritten: readonly BuildEdit[] = [];
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
  private readonly scales = new Rescaling();

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
        this.text = message.text;
        this.file = message.file;
        this.unwritten = [];
        this.whole = undefined;
        this.readAgain();
        break;
      case "write":
        this.write(message.path, understood(message.path, message.entry));
        break;
      case "put":
        this.unwritten = [
          ...this.unwritten,
          ...message.sizes.map(({ path, text }) => writeEntry(path, resized(this.entries[path], text))),
        ];
        this.readAgain();
        break;
      case "convert": {
        const entry = this.entries[message.path];
        if (entry?.form === "pieces")
          this.write(message.path, { ...entry, ...this.scales.inUnit(message.path, entry, message.unit) });
        break;
      }
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
    if (this.unwritten.length > 0) this.writeDown();
    const { revision } = message;
    const of = message.kind === "take" ? message.row : message.file;
    const tell = (taking: Taking) => this.post({ kind: "taken", revision, of, taking });
    let sheet: TakenSheet;
    try {
      sheet =
        message.kind === "take"
          ? takeRows(this.text, this.file, [{ line: 1, row: message.row }], "the reading", "")
          : takeReadings(this.text, this.file, message.text, message.file);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      tell({ taken: [], known: 0, refused: error.problems.map(formatProblem) });
      return;
    }
    const { text, taken, known, refused } = sheet;
    this.text = text;
    this.readAgain();
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

  private write(path: string, entry: Entry | undefined): void {
    const edit = writeEntry(path, entry);
    if (entry?.form === "pieces" && !isNumberAlone(entry.number)) this.typed.set(path, entry);
    else this.typed.delete(path);
    this.unwritten = [...this.unwritten, edit];
    const { [path]: _, ...others } = this.entries;
    this.entries = entry === undefined || edit.value === undefined ? others : { ...others, [path]: entry };
    if (this.build === undefined || this.troubles.length > 0) {
      this.readAgain();
      return;
    }
    try {
      this.build = withField(this.build, path, edit.value);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      this.readAgain();
    }
  }

  /** Brings the text up to date. */
  private writeDown(): void {
    this.text = editBuildText(this.text, this.unwritten, this.file);
    this.unwritten = [];
  }

  /** Reads the whole text. */
  private readAgain(): void {
    if (this.unwritten.length > 0) this.writeDown();
    const { build, troubles } = readWhatCan(this.text, this.file);
    this.build = build;
    this.troubles = troubles;
    try {
      this.entries = this.withTyped(readEntries(parseSource(this.text, this.file).data));
    } catch {
      this.entries = {};
    }
  }

  private withTyped(entries: Bench["entries"]): Bench["entries"] {
    const kept = [...this.typed].filter(([path, { number }]) => {
      const entry = entries[path];
      return entry?.form === "text" && entry.text === number.trim();
    });
    return kept.length === 0 ? entries : { ...entries, ...Object.fromEntries(kept) };
  }

  private tell(revision: number, troubles = this.troubles): void {
    if (this.unwritten.length > 0) this.writeDown();
    const { text, entries } = this;
    this.post({
      kind: "text",
      revision,
      text,
      name: this.build?.name ?? "",
      entries,
      places: this.places(),
      troubles,
    });
  }

  private places(): Places {
    const { build } = this;
    const kinds = Object.keys(positionKinds) as PositionKind[];
    return Object.fromEntries(
      kinds.flatMap((kind) => {
        const count = build === undefined ? undefined : countPositions(kind, build.values);
        return count === undefined ? [] : [[kind, count]];
      }),
    );
  }

  /** @param opened whether it is another build: its form is filled before the first verdicts, which take the longest */
  private async judge(revision: number, signal: AbortSignal, begun: number, opened: boolean): Promise<void> {
    const { build } = this;
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
    const { build, text, measuring: units, whole } = this;
    if (build === undefined || units === undefined || whole === undefined) return;
    const { set } = this.options;
    const { measuringPlan } = await loadMeasuring();
    const plan = measuringPlan(text, build, whole, { units, ...(set === undefined ? {} : { sets: [set] }) });
    this.post({ kind: "plan", revision, plan });
  }
}
