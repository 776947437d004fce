import type { BenchActions, BenchState } from "../../state/useBench.ts";

interface Props {
  readonly state: BenchState;
  readonly actions: BenchActions;
}

/** Takes a filled measurement sheet, and says what came of it. */
export function SheetDrop({ state: { sheet }, actions }: Props) {
  const open = async (file: File | undefined) => {
    if (file !== undefined) actions.sheet(await file.text(), file.name);
  };
  return (
    <div class="sheet-drop">
      <label class="file-button">
        Take in a filled sheet (CSV)…
        <input
          type="file"
          accept=".csv,text/csv"
          onChange={(event) => {
            open(event.currentTarget.files?.[0]);
            event.currentTarget.value = "";
          }}
        />
      </label>
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
