import type { LineView } from "../../protocol.ts";
import { RuleWords } from "./RuleWords.tsx";

/** Lines of an answer, each with what it is about. */
export function Told({ lines }: { readonly lines: readonly LineView[] }) {
  if (lines.length === 0) return null;
  return (
    <ul class="lines">
      {lines.map(({ label, text, tone }) => (
        <li key={text} class={`tone-${tone}`}>
          {label !== undefined && <b class="label">{label}</b>}
          <RuleWords text={text} />
        </li>
      ))}
    </ul>
  );
}
