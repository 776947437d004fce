import {
  type Build,
  type BuildEdit,
  compareBuilds,
  countPositions,
  describeChange,
  describeProblem,
  editBuildText,
  formatProblem,
  InputError,
  type PositionKind,
  parseSource,
  positionKinds,
  readBuildText,
  refineBuild,
  withField,
} from "trialfit";
import type {
  DocumentView,
  Entry,
  FromWorker,
  JudgeOptions,
  Places,
  ToWorker,
  Trouble,
} from "../protocol.ts";
import { inUnit } from "./inUnit.ts";
import { PackReport } from "./PackReport.ts";
import { readEntries } from "./readEntries.ts";
import { readWhatCan } from "./readWhatCan.ts";
import { viewDocument } from "./viewDocument.ts";
import { viewReport } from "./viewReport.ts";
import { writeEntry } from "./writeEntry.ts";

/** Why the judging of an older state ends. */
const OUTDATED = new Error("a newer state of the build has come");

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
  /** Entries that are read, but not in the text yet. */
  private unwritten: readonly BuildEdit[] = [];
  private options: JudgeOptions = {};
  private held: Build | undefined;
  /** Why the build to compare with could not be kept. */
  private unheld: DocumentView | undefined;
  private stop = new AbortController();
  private readonly packing = new PackReport();

  constructor(post: Post) {
    this.post = post;
  }

  /** Does what the page asks; answers come through `post`, with the revision that was asked for. */
  async take(message: ToWorker): Promise<void> {
    this.stop.abort(OUTDATED);
    this.stop = new AbortController();
    const { signal } = this.stop;
    const { revision } = message;
    try {
      this.change(message);
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
    try {
      await this.judge(revision, signal, performance.now());
    } catch (error) {
      if (error !== OUTDATED) throw error;
    }
  }

  private change(message: ToWorker): void {
    switch (message.kind) {
      case "open":
        this.text = message.text;
        this.file = message.file;
        this.unwritten = [];
        this.readAgain();
        break;
      case "write":
        this.write(message.path, message.entry);
        break;
      case "convert": {
        const entry = this.entries[message.path];
        if (entry?.form === "pieces") this.write(message.path, { ...entry, ...inUnit(entry, message.unit) });
        break;
      }
      case "judge":
        this.options = message.options;
        break;
      case "hold":
        this.held = undefined;
        this.unheld = undefined;
        if (message.text !== undefined) this.hold(message.text);
    }
  }

  private hold(text: string): void {
    try {
      this.held = readBuildText(text, "the kept build");
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      const lead = error.problems.map((problem) => ({ text: formatProblem(problem), tone: "bad" as const }));
      this.unheld = { title: "The build to compare with cannot be read", lead, sections: [], closing: [] };
    }
  }

  private write(path: string, entry: Entry | undefined): void {
    const edit = writeEntry(path, entry);
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
      this.entries = readEntries(parseSource(this.text, this.file).data);
    } catch {
      this.entries = {};
    }
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

  private async judge(revision: number, signal: AbortSignal, begun: number): Promise<void> {
    const { build } = this;
    if (build === undefined) {
      this.tell(revision);
      this.post({ kind: "unread", revision });
      return;
    }
    const { stage, set } = this.options;
    const options = {
      ...(stage === undefined ? {} : { stage }),
      ...(set === undefined ? {} : { sets: [set] }),
    };
    let first: number | undefined;
    for await (const { report, pending } of refineBuild(build, { ...options, signal })) {
      const view = this.packing.pack(viewReport(report));
      const took = performance.now() - begun;
      first ??= took;
      this.post({ kind: "report", revision, view, done: pending.length === 0, first, took });
      if (first === took) this.tell(revision);
    }
    if (this.held === undefined) this.post({ kind: "change", revision, view: this.unheld });
    else {
      const change = await compareBuilds(this.held, build, options);
      this.post({ kind: "change", revision, view: viewDocument(describeChange(change)) });
    }
  }
}
