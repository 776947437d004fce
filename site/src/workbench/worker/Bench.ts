import {
  type Build,
  compareBuilds,
  describeChange,
  editBuildText,
  formatProblem,
  InputError,
  parseSource,
  readBuildText,
  refineBuild,
} from "trialfit";
import type { DocumentView, Entry, FromWorker, JudgeOptions, ToWorker, Trouble } from "../protocol.ts";
import { inUnit } from "./inUnit.ts";
import { readEntries } from "./readEntries.ts";
import { readWhatCan } from "./readWhatCan.ts";
import { viewDocument } from "./viewDocument.ts";
import { viewReport } from "./viewReport.ts";
import { writeEntry } from "./writeEntry.ts";

/** Why the judging of an older state ends. */
const OUTDATED = new Error("a newer state of the build has come");

type Post = (message: FromWorker) => void;

/** The build on the bench: its file's text, read and judged anew with every change, a newer change before an older. */
export class Bench {
  private readonly post: Post;
  private text = "";
  private file = "build.yaml";
  private options: JudgeOptions = {};
  private held: Build | undefined;
  /** Why the build to compare with could not be kept. */
  private unheld: DocumentView | undefined;
  private stop = new AbortController();

  constructor(post: Post) {
    this.post = post;
  }

  /** Does what the page asks; answers come through `post`, with the revision that was asked for. */
  async take(message: ToWorker): Promise<void> {
    this.stop.abort(OUTDATED);
    this.stop = new AbortController();
    const { signal } = this.stop;
    try {
      this.change(message);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      const path = "path" in message ? message.path : "";
      const troubles = error.problems.map(({ line, found, expected }) => ({
        path,
        line,
        text: `found ${found}; expected ${expected}.`,
      }));
      this.tell(message.revision, troubles);
      return;
    }
    try {
      await this.judge(message.revision, signal);
    } catch (error) {
      if (error !== OUTDATED) throw error;
    }
  }

  private change(message: ToWorker): void {
    switch (message.kind) {
      case "open":
        this.text = message.text;
        this.file = message.file;
        break;
      case "write":
        this.text = editBuildText(this.text, [writeEntry(message.path, message.entry)], this.file);
        break;
      case "convert":
        this.convert(message.path, message.unit);
        break;
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

  /** Writes a dimension in another unit: the same size, in another number. */
  private convert(path: string, unit: string): void {
    const entry = this.entries()[path];
    if (entry?.form !== "pieces") return;
    const edit = writeEntry(path, { ...entry, ...inUnit(entry, unit) });
    this.text = editBuildText(this.text, [edit], this.file);
  }

  private entries(): Readonly<Record<string, Entry>> {
    try {
      return readEntries(parseSource(this.text, this.file).data);
    } catch {
      return {};
    }
  }

  private tell(revision: number, troubles: readonly Trouble[], name = ""): void {
    this.post({ kind: "text", revision, text: this.text, name, entries: this.entries(), troubles });
  }

  private async judge(revision: number, signal: AbortSignal): Promise<void> {
    const begun = performance.now();
    const { build, troubles } = readWhatCan(this.text, this.file);
    this.tell(revision, troubles, build?.name);
    if (build === undefined) {
      this.post({ kind: "unread", revision });
      return;
    }
    const { stage, set } = this.options;
    const options = {
      ...(stage === undefined ? {} : { stage }),
      ...(set === undefined ? {} : { sets: [set] }),
    };
    for await (const { report, pending } of refineBuild(build, { ...options, signal }))
      this.post({
        kind: "report",
        revision,
        view: viewReport(report),
        done: pending.length === 0,
        took: performance.now() - begun,
      });
    if (this.held === undefined) this.post({ kind: "change", revision, view: this.unheld });
    else {
      const change = await compareBuilds(this.held, build, options);
      this.post({ kind: "change", revision, view: viewDocument(describeChange(change)) });
    }
  }
}
