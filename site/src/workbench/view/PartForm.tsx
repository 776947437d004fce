import { useMemo, useState } from "preact/hooks";
import type { FormData, FormPart } from "../protocol.ts";
import type { BenchActions } from "../state/BenchActions.ts";
import type { BenchState } from "../state/BenchState.ts";
import { AimsForm } from "./AimsForm.tsx";
import { isFilled } from "./entryOf.ts";
import { FieldRow } from "./FieldRow.tsx";
import { LabelledSelect } from "./LabelledSelect.tsx";

interface Props {
  readonly form: FormData;
  readonly state: BenchState;
  readonly actions: BenchActions;
  /** Parts that are unfolded. */
  readonly unfolded: ReadonlySet<string>;
  readonly unfold: (key: string, open: boolean) => void;
  /** Goes to where the sizes that are to be found are found. */
  readonly toSizes: () => void;
}

const INSTRUMENTS = "workbench-instruments";

const SHOWN = [
  { id: "all", label: "every field" },
  { id: "filled", label: "what is filled in" },
  { id: "wanted", label: "what is wanted next" },
] as const;
type Show = (typeof SHOWN)[number]["id"];

/** What is searched for words, by the path of the field. */
function searchedTexts({ parts }: FormData): ReadonlyMap<string, string> {
  return new Map(
    parts.flatMap((part) =>
      part.fields.map(({ path, label, help }) => [
        path,
        `${part.label} ${label} ${path} ${help}`.toLowerCase(),
      ]),
    ),
  );
}

/** The form of a build: a group for each part, a row for each field. */
export function PartForm({ form, state, actions, unfolded, unfold, toSizes }: Props) {
  const [search, setSearch] = useState("");
  const [show, setShow] = useState<Show>("all");
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  const wanted = new Set(state.report?.wanted.map(({ path }) => path));
  const texts = useMemo(() => searchedTexts(form), [form]);
  const visible = (part: FormPart) =>
    part.fields.filter(({ path }) => {
      if (!words.every((word) => texts.get(path)!.includes(word))) return false;
      return show === "all" || (show === "filled" ? isFilled(state.entries[path]) : wanted.has(path));
    });
  const aims = Object.keys(state.entries).filter((path) => path.startsWith("aims.")).length;
  const narrowed = words.length > 0 || show !== "all";
  return (
    <div class="parts">
      <search class="narrow" aria-label="Fields">
        <label>
          Find a field
          <input type="search" value={search} onInput={(event) => setSearch(event.currentTarget.value)} />
        </label>
        <LabelledSelect label="Show" value={show} options={SHOWN} choose={(id) => setShow(id as Show)} />
      </search>
      <datalist id={INSTRUMENTS}>
        {form.instruments.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      {!narrowed && (
        <details
          class="part"
          open={unfolded.has("aims")}
          onToggle={(event) => unfold("aims", event.currentTarget.open)}
        >
          <summary>
            <h3>Aims</h3>
            <span class="quiet number">{aims}</span>
          </summary>
          {unfolded.has("aims") && (
            <>
              <p class="quiet">
                What the sizes that are “to be found” must reach. Until they are found the rules that need
                them are unknown.{" "}
                {Object.values(state.entries).some(({ form: kind }) => kind === "wanted") && (
                  <button type="button" class="link" onClick={toSizes}>
                    To the sizes to be found
                  </button>
                )}
              </p>
              <AimsForm form={form} state={state} actions={actions} />
            </>
          )}
        </details>
      )}
      {form.parts.map((part) => {
        const fields = visible(part);
        if (fields.length === 0) return null;
        const filled = part.fields.filter(({ path }) => isFilled(state.entries[path])).length;
        const open = narrowed || unfolded.has(part.key);
        return (
          <details
            class="part"
            key={part.key}
            open={open}
            onToggle={(event) => !narrowed && unfold(part.key, event.currentTarget.open)}
          >
            <summary>
              <h3>{part.label}</h3>
              <span class="quiet number">
                {filled} of {part.fields.length}
              </span>
            </summary>
            {open && (
              <>
                <p class="quiet">{part.help}</p>
                {fields.map((field) => (
                  <FieldRow
                    key={field.path}
                    field={field}
                    entry={state.entries[field.path]}
                    troubles={state.troubles.filter(({ path }) => path === field.path)}
                    instruments={INSTRUMENTS}
                    ways={form.ways}
                    places={field.per === undefined ? undefined : state.places[field.per]}
                    actions={actions}
                  />
                ))}
              </>
            )}
          </details>
        );
      })}
    </div>
  );
}
