import type { VerdictWord } from "trialfit";
import { spaced } from "../data/words.ts";
import "./VerdictMark.css";

/** A shape beside the word, so that neither colour nor shape is the only sign. */
const shapes: Readonly<Record<VerdictWord, string>> = {
  holds: "M2 6.5l3 3L10 3",
  fails: "M2.5 2.5l7 7M9.5 2.5l-7 7",
  open: "M2 6h8M2 3.5v5M10 3.5v5",
  unknown: "M3.5 4a2.5 2.2 0 1 1 3.6 2C6.2 6.5 6 7 6 7.7M6 9.7v.6",
  "not-applicable": "M3 6h6",
};

/** The word of a verdict with its shape. */
export function VerdictMark({ verdict }: { readonly verdict: VerdictWord }) {
  return (
    <span class={`badge ${verdict}`}>
      <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
        <path d={shapes[verdict]} fill="none" stroke="currentColor" stroke-width="1.8" />
      </svg>
      {spaced(verdict)}
    </span>
  );
}
