import type { Entry, FormField } from "../protocol.ts";
import { DimensionEditor } from "./DimensionEditor.tsx";
import { ReadingsEditor } from "./ReadingsEditor.tsx";
import { RowsEditor } from "./RowsEditor.tsx";
import { WantedEditor } from "./WantedEditor.tsx";

interface Props {
  readonly field: FormField;
  readonly entry: Entry;
  readonly id: string;
  readonly describedBy: string | undefined;
  readonly wrong: boolean;
  readonly places: number | undefined;
  readonly write: (entry: Entry) => void;
  readonly convert: (unit: string) => void;
  readonly typed: () => void;
}

/** The boxes of one entry, by how it is written. */
export function EntryEditor(props: Props) {
  const { field, entry, id, describedBy, wrong, write } = props;
  if (entry.form === "pieces") return <DimensionEditor {...props} entry={entry} key={field.path} />;
  if (entry.form === "rows") return <RowsEditor {...props} entry={entry} />;
  if (entry.form === "readings") return <ReadingsEditor {...props} entry={entry} />;
  if (entry.form === "wanted") return <WantedEditor {...props} entry={entry} />;
  if (entry.form === "file")
    return (
      <textarea
        id={id}
        rows={Math.min(8, entry.file.split("\n").length + 1)}
        spellcheck={false}
        value={entry.file}
        aria-invalid={wrong}
        aria-describedby={describedBy}
        onInput={(event) => write({ form: "file", file: event.currentTarget.value })}
      />
    );
  if (entry.form === "seen") return null;
  const text = (value: string) => write({ ...entry, text: value });
  if (field.options !== undefined)
    return (
      <select
        id={id}
        value={entry.text}
        aria-invalid={wrong}
        aria-describedby={describedBy}
        onChange={(event) => text(event.currentTarget.value)}
      >
        <option value="">not said</option>
        {Object.entries(field.options).map(([word, meaning]) => (
          <option key={word} value={word} title={meaning}>
            {word.replaceAll("-", " ")}
          </option>
        ))}
        {entry.text !== "" && field.options[entry.text] === undefined && (
          <option value={entry.text}>{entry.text}</option>
        )}
      </select>
    );
  return (
    <input
      id={id}
      type="text"
      inputMode={field.kind === "count" ? "numeric" : undefined}
      autocomplete="off"
      value={entry.text}
      aria-invalid={wrong}
      aria-describedby={describedBy}
      onInput={(event) => text(event.currentTarget.value)}
    />
  );
}
