import type { VerdictView } from "../data/verdictView.ts";
import { ComparisonDrawing } from "./ComparisonDrawing.tsx";
import { VerdictMark } from "./VerdictMark.tsx";
import { VerdictNotes } from "./VerdictNotes.tsx";
import "./LiveVerdict.css";

/**
 * Stands in place of a verdict while a number cannot be read: that of other numbers is none of these. It has the boxes of
 * a verdict, so that it takes the place of all that the page was made with, notes too.
 */
export function NoVerdict() {
  return (
    <>
      <div class="live-bands">
        <p role="status">
          <VerdictMark word="unknown" /> A number cannot be read: there is no verdict on what stands there.
        </p>
      </div>
      <div class="live-notes" />
    </>
  );
}

/** A verdict that may change while somebody looks: its word is read out when it does. */
export function LiveVerdict({ view }: { readonly view: VerdictView }) {
  return (
    <>
      <div class="live-bands">
        <p role="status">
          <VerdictMark word={view.verdict} /> {view.meaning}
        </p>
        {view.comparisons.map((one) => (
          <ComparisonDrawing key={one.label} view={one} />
        ))}
      </div>
      <div class="live-notes">
        <VerdictNotes view={view} />
      </div>
    </>
  );
}
