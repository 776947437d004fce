import type { PaperProgress } from "trialfit/papers";
import type { PaperGround, PaperOrder, WrittenSet } from "../deskProtocol.ts";
import { desk } from "./DeskClient.ts";

export interface PaperState {
  readonly order: PaperOrder;
  /** What the papers that are shown were written from. */
  readonly ground: PaperGround | undefined;
  readonly written: WrittenSet | undefined;
  /** How far the writing is; undefined while nothing is being written. */
  readonly progress: PaperProgress | undefined;
  readonly failure: string | undefined;
}

/** The papers of the build on the bench, kept while another view is shown. */
class PaperStore {
  private hearer: () => void = () => undefined;
  private begun = false;
  private now: PaperState = {
    order: {
      only: [],
      units: "written",
      size: "A4",
      revision: "",
      date: new Date().toISOString().slice(0, 10),
      passed: {},
    },
    ground: undefined,
    written: undefined,
    progress: undefined,
    failure: undefined,
  };

  get state(): PaperState {
    return this.now;
  }

  /** Chooses these papers, unless a person chose before. */
  begin(only: readonly string[]): void {
    if (this.begun) return;
    this.begun = true;
    this.now = { ...this.now, order: { ...this.now.order, only } };
  }

  /** Who is told of changes; nobody after what comes back was called. */
  listen(hearer: () => void): () => void {
    this.hearer = hearer;
    return () => {
      this.hearer = () => undefined;
    };
  }

  change(order: Partial<PaperOrder>): void {
    this.set({ order: { ...this.now.order, ...order } });
  }

  /** Writes what is ordered; what is still being written for an order before is left. */
  write(ground: PaperGround): void {
    const { order } = this.now;
    this.set({ progress: {}, failure: undefined });
    desk.ask({ kind: "write", ground, order }, (answer) => {
      if (answer.kind === "progress") this.set({ progress: answer.progress });
      else if (answer.kind === "written")
        this.set({ written: answer.written, ground, progress: undefined, failure: undefined });
      else if (answer.kind === "failed")
        this.set({ written: undefined, progress: undefined, failure: answer.message });
    });
  }

  private set(part: Partial<PaperState>): void {
    this.now = { ...this.now, ...part };
    this.hearer();
  }
}

/** One for the page. */
export const papers = new PaperStore();
