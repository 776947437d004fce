import type { VerdictView } from "../data/verdictView.ts";
import { ComparisonDrawing } from "./ComparisonDrawing.tsx";
import { VerdictNotes } from "./VerdictNotes.tsx";

/** What a rule says of one build: the bands against their limits, what to do, what it rests on. */
export function VerdictFigure({ view }: { readonly view: VerdictView }) {
  return (
    <>
      {view.comparisons.map((one) => (
        <ComparisonDrawing key={one.label + one.rest} view={one} />
      ))}
      <VerdictNotes view={view} />
    </>
  );
}
