import type { VerdictView } from "../data/verdictView.ts";
import { ComparisonDrawing } from "./ComparisonDrawing.tsx";
import { VerdictMark } from "./VerdictMark.tsx";
import { VerdictNotes } from "./VerdictNotes.tsx";
import "./LiveVerdict.css";

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
