import { useEffect, useReducer } from "preact/hooks";
import type { RemedyProgress, SolvePhase } from "trialfit";
import type { ChoosingGround, RemedyView, SolutionView } from "../choosingProtocol.ts";
import type { FromDesk } from "../deskProtocol.ts";
import { desk } from "./DeskClient.ts";

/** Something that was asked for, and what came of it. */
export interface Asked<View, Progress> {
  readonly ground: ChoosingGround;
  readonly view?: View | undefined;
  /** How far it is; undefined while nothing is being sought. */
  readonly progress?: Progress | undefined;
  readonly failure?: string | undefined;
}

type AskedSizes = Asked<SolutionView, SolvePhase>;
type AskedChange = Asked<RemedyView, RemedyProgress>;

/** Sizes and changes that were asked for, kept while another view is shown. */
class ChoosingStore {
  private readonly hearers = new Set<() => void>();
  private readonly changes = new Map<string, AskedChange>();
  private found: AskedSizes | undefined;
  /** Files with sizes that were taken from the answer: it goes on being about them. */
  private readonly taken = new Set<string>();
  /** Sizes that were taken last, by their entries. */
  readonly marks = new Map<string, string>();

  get sizes(): AskedSizes | undefined {
    return this.found;
  }

  change(rule: string): AskedChange | undefined {
    return this.changes.get(rule);
  }

  /** Who is told of changes, until what comes back is called. */
  listen(hearer: () => void): () => void {
    this.hearers.add(hearer);
    return () => this.hearers.delete(hearer);
  }

  find(ground: ChoosingGround): void {
    this.taken.clear();
    this.marks.clear();
    this.set({ ground, progress: "sizes" });
    desk.ask({ kind: "find", ground }, (answer) => {
      if (answer.kind === "finding") this.set({ ground, progress: answer.phase });
      else if (answer.kind === "found") this.set({ ground, view: answer.view });
      else this.set(failed(ground, answer));
    });
  }

  mend(ground: ChoosingGround, rule: string): void {
    this.leaveChanges();
    this.setChange(rule, { ground, progress: {} });
    desk.ask({ kind: "mend", ground, rule }, (answer) => {
      if (answer.kind === "mending") this.setChange(rule, { ground, progress: answer.progress });
      else if (answer.kind === "mended") this.setChange(rule, { ground, view: answer.view });
      else this.setChange(rule, failed(ground, answer));
    });
  }

  leave(kind: "find" | "mend"): void {
    desk.leave(kind);
    if (kind === "find") this.set(undefined);
    else this.leaveChanges();
  }

  /** From now on the answer is about this file, too. */
  take(text: string): void {
    this.taken.add(text);
  }

  /** Whether the answer about sizes is about a build as it is now. */
  isAbout(now: ChoosingGround): boolean {
    const { ground } = this.found ?? {};
    return ground !== undefined && (isSame(ground, now) || this.taken.has(now.text));
  }

  /** Only one is looked for at a time. */
  private leaveChanges(): void {
    for (const [rule, { progress }] of this.changes) if (progress !== undefined) this.changes.delete(rule);
    this.tell();
  }

  private set(found: AskedSizes | undefined): void {
    this.found = found;
    this.tell();
  }

  private setChange(rule: string, asked: AskedChange): void {
    this.changes.set(rule, asked);
    this.tell();
  }

  private tell(): void {
    for (const hearer of this.hearers) hearer();
  }
}

function failed(ground: ChoosingGround, answer: FromDesk): Asked<never, never> {
  return { ground, failure: answer.kind === "failed" ? answer.message : "something else was answered" };
}

/** Whether two grounds say the same. */
export const isSame = (a: ChoosingGround, b: ChoosingGround): boolean =>
  a.text === b.text && a.set === b.set && a.stage === b.stage;

/** One for the page. */
export const choosing = new ChoosingStore();

/** Draws a component anew whenever something was found. */
export function useChoosing(): void {
  const [, draw] = useReducer((count: number, _: undefined) => count + 1, 0);
  useEffect(() => choosing.listen(() => draw(undefined)), []);
}
