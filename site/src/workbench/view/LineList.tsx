import { BandDrawing } from "../../components/BandDrawing.tsx";
import type { LineView } from "../protocol.ts";

/** Lines of a finding: what they are about, what they say, and the band where there is one. */
export function LineList({ lines }: { readonly lines: readonly LineView[] }) {
  return (
    <ul class="lines">
      {lines.map((line, index) => (
        <li key={index} class={`tone-${line.tone}`}>
          {line.label !== undefined && <b class="label">{line.label}</b>}
          <span class="number">{line.text}</span>
          {line.band !== undefined && <BandDrawing picture={line.band} />}
        </li>
      ))}
    </ul>
  );
}
