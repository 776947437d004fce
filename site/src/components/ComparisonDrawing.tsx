import type { ComparisonView } from "../data/comparisonView.ts";
import { BandDrawing } from "./BandDrawing.tsx";
import "./ComparisonDrawing.css";

const states: Readonly<Record<ComparisonView["state"], string>> = {
  sure: "met over the whole band",
  possible: "met for part of the band",
  no: "not met",
  missing: "not known",
};

/** One comparison: what is compared, in words and as a band against its limit. */
export function ComparisonDrawing({ view }: { readonly view: ComparisonView }) {
  const { label, href, rest, state, picture } = view;
  return (
    <figure class="comparison">
      <figcaption>
        {href === undefined ? <span>{label}</span> : <a href={href}>{label}</a>}
        <span class="number">{rest}</span> <span class={`state ${state}`}>{states[state]}</span>
      </figcaption>
      {picture && <BandDrawing picture={picture} />}
    </figure>
  );
}
