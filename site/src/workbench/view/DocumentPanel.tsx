import type { DocumentView } from "../protocol.ts";
import { LineList } from "./LineList.tsx";

/** A document of the evaluator: sections of items with their lines. */
export function DocumentPanel({ view }: { readonly view: DocumentView }) {
  return (
    <div class="document">
      <LineList lines={view.lead} />
      {view.sections.map(({ heading, intro, items }) => (
        <details class="section" key={heading} open>
          <summary>
            <h3>{heading}</h3>
          </summary>
          {intro !== undefined && <p class="quiet">{intro}</p>}
          {items.map((item) => (
            <div class="item" key={item.id ?? item.title}>
              <h4>{item.title}</h4>
              <LineList lines={item.lines} />
            </div>
          ))}
        </details>
      ))}
    </div>
  );
}
