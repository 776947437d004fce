import type { BenchActions } from "../../state/BenchActions.ts";
import type { BenchState } from "../../state/BenchState.ts";
import { FileButton } from "../FileButton.tsx";

interface Props {
  readonly state: BenchState;
  readonly actions: BenchActions;
}

/** Takes a filled measurement sheet, and says what came of it. */
export function SheetDrop({ state: { sheet }, actions }: Props) {
  return (
    <div class="sheet-drop">
      <FileButton accept=".csv,text/csv" take={actions.sheet} refuse={actions.refuse}>
        Take in a filled sheet (CSV)…
      </FileButton>
      <div role="status">
        {sheet !== undefined && (
          <>
            <p>
              {sheet.file}: {sheet.taken.length} readings taken, {sheet.known} known before,{" "}
              {sheet.refused.length} refused.
            </p>
            <ul class="troubles">
              {sheet.refused.map((text) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
            <ul>
              {sheet.taken
                .filter(({ instead }) => instead !== undefined)
                .map(({ label, text, instead }) => (
                  <li key={label}>
                    {label}: {text} instead of {instead}, which is kept
                  </li>
                ))}
            </ul>
          </>
        )}
      </div>
    </div>
  );
}
