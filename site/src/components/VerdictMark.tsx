import type { VerdictWord } from "trialfit";
import { spaced } from "../data/words.ts";
import "./VerdictMark.css";

/** A shape beside the word, so that neither colour nor shape is the only sign. */
const shapes = {
  holds: "M2 6.5l3 3L10 3",
  fails: "M2.5 2.5l7 7M9.5 2.5l-7 7",
  open: "M2 6h8M2 3.5v5M10 3.5v5",
  unknown: "M3.5 4a2.5 2.2 0 1 1 3.6 2C6.2 6.5 6 7 6 7.7M6 9.7v.6",
  "not-applicable": "M3 6h6",
  /** No verdict yet: it is being worked out. */
  pending: "M2.5 6h.1M6 6h.1M9.5 6h.1",
} as const satisfies Record<VerdictWord | "pending", string>;

/** The word of a verdict, or that there is none yet, with its shape. */
export function VerdictMark({ word }: { readonly word: VerdictWord | "pending" }) {
  return (
    <span class={`badge ${word}`}>
      <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
        <path d={shapes[word]} fill="none" stroke="currentColor" stroke-width="1.8" stroke-linecap="round" />
      </svg>
      {word === "pending" ? "being worked out" : spaced(word)}
    </span>
  );
}
