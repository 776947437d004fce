import { useEffect, useReducer } from "preact/hooks";
import type { ToTrace, TraceView } from "../traceProtocol.ts";
import { desk } from "./DeskClient.ts";

type Ground = ToTrace["ground"];

/** How numbers come about that somebody looks at, about the build as it is: asked for again whenever that changes. */
class NumberStore {
  private readonly hearers = new Set<() => void>();
  /** What is looked at, with how many look. */
  private readonly wanted = new Map<string, number>();
  private ground: Ground | undefined;
  private asked: { readonly text: string; readonly ids: readonly string[] } | undefined;
  private traces: Readonly<Record<string, TraceView>> = {};
  private told: string | undefined;
  failure: string | undefined;

  trace(id: string): TraceView | undefined {
    return this.traces[id];
  }

  /** Whether what is told is about this text. */
  isAbout(text: string): boolean {
    return this.told === text;
  }

  /** Looks at numbers until what comes back is called. */
  look(ids: readonly string[], hearer: () => void): () => void {
    this.hearers.add(hearer);
    for (const id of ids) this.wanted.set(id, (this.wanted.get(id) ?? 0) + 1);
    this.ask();
    return () => {
      this.hearers.delete(hearer);
      for (const id of ids) {
        const left = this.wanted.get(id)! - 1;
        if (left > 0) this.wanted.set(id, left);
        else this.wanted.delete(id);
      }
    };
  }

  /** The build as it is now. */
  follow(ground: Ground): void {
    this.ground = ground;
    this.ask();
  }

  private ask(): void {
    const { ground } = this;
    const ids = [...this.wanted.keys()];
    if (ground === undefined || ids.length === 0) return;
    const { asked } = this;
    if (asked?.text === ground.text && ids.every((id) => asked.ids.includes(id))) return;
    this.asked = { text: ground.text, ids };
    desk.ask({ kind: "trace", ground, ids }, (answer) => {
      this.failure = answer.kind === "failed" ? answer.message : undefined;
      if (answer.kind === "traced") {
        this.traces = answer.traces;
        this.told = ground.text;
      } else this.asked = undefined;
      for (const hearer of this.hearers) hearer();
    });
  }
}

/** One for the page. */
export const numbers = new NumberStore();

/** Looks at these numbers, and draws a component anew whenever they were told. */
export function useNumbers(ids: readonly string[]): void {
  const [, draw] = useReducer((count: number, _: undefined) => count + 1, 0);
  const key = ids.join(" ");
  useEffect(() => numbers.look(ids, () => draw(undefined)), [key]);
}
