import { useEffect, useState } from "preact/hooks";
import type { Choice, Entry, FormField, Trouble } from "../protocol.ts";
import type { BenchActions } from "../state/BenchActions.ts";
import { AboutEditor } from "./AboutEditor.tsx";
import { EntryEditor } from "./EntryEditor.tsx";
import { emptyEntry, isFilled } from "./entryOf.ts";
import { WaysOfGiving } from "./WaysOfGiving.tsx";

interface Props {
  readonly field: FormField;
  readonly entry: Entry | undefined;
  readonly troubles: readonly Trouble[];
  readonly instruments: string;
  readonly ways: readonly Choice[];
  /** How many the build has of what this dimension is measured on. */
  readonly places: number | undefined;
  readonly actions: BenchActions;
}

/** Whether a draft gives a dimension in another way than as one size. */
const isOtherWay = ({ form }: Entry): boolean => form === "readings" || form === "wanted";

/** One field: its box, what is wrong with it, and on demand its help, where it comes from and what is taken without it. */
export function FieldRow({ field, entry, troubles, instruments, ways, places, actions }: Props) {
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
    actions.settle();
    const row = event.currentTarget as HTMLElement;
    if (row.contains(event.relatedTarget as Node | null)) return;
    // Rows that were laid out and not read yet, and bounds not given yet, are no part of the file.
    setDraft((one) =>
      one !== undefined && one.form !== (entry?.form ?? "") && isOtherWay(one) ? one : undefined,
    );
  };
  const describedBy = troubles.length > 0 ? `${id}-trouble` : undefined;
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
        places={places}
        write={write}
        typed={() => setDraft(undefined)}
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
        {per !== undefined && <p class="quiet">May be measured for each {per}.</p>}
        <p class="quiet">
          {rules === 0 ? "No rule rests on it; it is shown in reports." : `${rules} rules rest on it.`}{" "}
          <code>{field.path}</code>
        </p>
        {field.kind === "dimension" && shown.form !== "file" && (
          <WaysOfGiving field={field} entry={shown} write={write} />
        )}
        {field.kind === "dimension" && "about" in shown && (
          <AboutEditor
            label={field.label}
            about={shown.about}
            instruments={instruments}
            ways={ways}
            write={(next) => write({ ...shown, about: next })}
          />
        )}
      </details>
    </div>
  );
}
