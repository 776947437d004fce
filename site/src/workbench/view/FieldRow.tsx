import { useEffect, useState } from "preact/hooks";
import type { Entry, FormField, Trouble } from "../protocol.ts";
import type { BenchActions } from "../state/useBench.ts";
import { AboutEditor } from "./AboutEditor.tsx";
import { EntryEditor } from "./EntryEditor.tsx";
import { emptyEntry, isFilled } from "./entryOf.ts";

interface Props {
  readonly field: FormField;
  readonly entry: Entry | undefined;
  readonly troubles: readonly Trouble[];
  readonly instruments: string;
  readonly actions: BenchActions;
}

/** One field: its box, what is wrong with it, and on demand its help, where it comes from and what is taken without it. */
export function FieldRow({ field, entry, troubles, instruments, actions }: Props) {
  const [draft, setDraft] = useState<Entry | undefined>(undefined);
  // What another hand changed (undo, another file) outranks what was being typed.
  useEffect(() => {
    setDraft((one) => (one !== undefined && isFilled(one) && entry === undefined ? undefined : one));
  }, [entry]);
  const shown = draft ?? entry ?? emptyEntry(field);
  const id = `field-${field.path.replace(".", "-")}`;
  const write = (next: Entry) => {
    setDraft(next);
    actions.write(field.path, next);
  };
  const leave = (event: FocusEvent) => {
    const row = event.currentTarget as HTMLElement;
    if (row.contains(event.relatedTarget as Node | null)) return;
    setDraft(undefined);
    actions.settle();
  };
  const describedBy = troubles.length > 0 ? `${id}-trouble` : undefined;
  const about = shown.form === "pieces" || shown.form === "text" ? shown.about : undefined;
  const { help, range, leftOut = [], rules, per } = field;
  return (
    <div class={`field ${isFilled(entry) ? "filled" : ""}`} id={`${id}-row`} onFocusOut={leave}>
      <label for={id}>{field.label}</label>
      <EntryEditor
        field={field}
        entry={shown}
        id={id}
        describedBy={describedBy}
        wrong={troubles.length > 0}
        write={write}
        convert={(unit) => {
          setDraft(undefined);
          actions.convert(field.path, unit);
        }}
      />
      {troubles.length > 0 && (
        <p class="trouble" id={`${id}-trouble`}>
          {troubles.map(({ text }) => text).join(" ")}
        </p>
      )}
      <details class="more">
        <summary>
          <span class="sr-only">{field.label}: </span>more
        </summary>
        <p>{help}</p>
        {range !== undefined && (
          <p class="quiet">
            From {range[0]} to {range[1]}.
          </p>
        )}
        {leftOut.map((text) => (
          <p class="quiet" key={text}>
            Left out: {text}.
          </p>
        ))}
        {per !== undefined && (
          <p class="quiet">May be measured for each {per}: write the readings in the File panel.</p>
        )}
        <p class="quiet">
          {rules === 0 ? "No rule rests on it; it is shown in reports." : `${rules} rules rest on it.`}{" "}
          <code>{field.path}</code>
        </p>
        {field.kind === "dimension" &&
          about !== undefined &&
          (shown.form === "pieces" || shown.form === "text") && (
            <AboutEditor
              label={field.label}
              about={about}
              instruments={instruments}
              write={(next) => write({ ...shown, about: next })}
            />
          )}
      </details>
    </div>
  );
}
