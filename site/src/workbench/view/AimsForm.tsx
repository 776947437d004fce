import { useState } from "preact/hooks";
import type { Entry, FormData, Trouble } from "../protocol.ts";
import type { BenchActions } from "../state/BenchActions.ts";
import type { BenchState } from "../state/BenchState.ts";

interface Props {
  readonly form: FormData;
  readonly state: BenchState;
  readonly actions: BenchActions;
}

const PREFIX = "aims.";
const LIST = "workbench-quantities";
const relations = { "": "exactly", "at least": "at least", "at most": "at most" } as const;

/** An aim in its pieces: how it is compared, and with what. */
function pieces(text: string): { readonly relation: string; readonly value: string } {
  const [, relation = "", value = ""] = /^(at least|at most)?\s*(.*)$/is.exec(text.trim()) ?? [];
  return { relation: relation.toLowerCase(), value };
}

const joined = (relation: string, value: string) => [relation, value.trim()].filter(Boolean).join(" ");

/** What the sizes that are to be found must reach: quantities, each with a value or a bound. */
export function AimsForm({ form, state, actions }: Props) {
  const [chosen, choose] = useState("");
  const [draft, setDraft] = useState<{ readonly id: string; readonly text: string } | undefined>(undefined);
  const byId = new Map(form.quantities.map((one) => [one.id, one]));
  const aims = Object.entries(state.entries).flatMap(([path, entry]) =>
    path.startsWith(PREFIX) && entry.form === "text"
      ? [{ id: path.slice(PREFIX.length), text: entry.text }]
      : [],
  );
  const shown = aims.map((aim) => (aim.id === draft?.id ? draft : aim));
  const rows = draft === undefined || aims.some(({ id }) => id === draft.id) ? shown : [...shown, draft];
  const write = (id: string, text: string) => {
    setDraft({ id, text });
    const entry: Entry | undefined =
      pieces(text).value === "" ? undefined : { form: "text", text, about: {} };
    actions.write(`${PREFIX}${id}`, entry);
  };
  const found = form.quantities.find(({ id, label }) => id === chosen.trim() || label === chosen.trim());
  return (
    <div class="aims">
      <datalist id={LIST}>
        {form.quantities.map(({ id, label }) => (
          <option key={id} value={label} />
        ))}
      </datalist>
      {rows.map(({ id, text }) => {
        const { relation, value } = pieces(text);
        const { label = id, unit = "1" } = byId.get(id) ?? {};
        const wrong: readonly Trouble[] = state.troubles.filter(({ path }) => path === `${PREFIX}${id}`);
        return (
          <div class="field filled" key={id}>
            <label for={`aim-${id}`}>{label}</label>
            <div class="pieces">
              <select
                aria-label={`${label}: how it is compared`}
                value={relation}
                onChange={(event) => write(id, joined(event.currentTarget.value, value))}
              >
                {Object.entries(relations).map(([word, name]) => (
                  <option key={word} value={word}>
                    {name}
                  </option>
                ))}
              </select>
              <input
                id={`aim-${id}`}
                type="text"
                autocomplete="off"
                placeholder={unit === "1" ? "a number" : `with its unit, as ${unit}`}
                aria-invalid={wrong.length > 0}
                value={value}
                onInput={(event) => write(id, joined(relation, event.currentTarget.value))}
              />
              <button
                type="button"
                aria-label={`${label}: take out this aim`}
                onClick={() => {
                  setDraft(undefined);
                  actions.write(`${PREFIX}${id}`, undefined);
                }}
              >
                ×
              </button>
            </div>
            {wrong.map(({ text: what }) => (
              <p class="trouble" key={what}>
                {what}
              </p>
            ))}
          </div>
        );
      })}
      <div class="row" id="field-aims-quantity-row">
        <label>
          A quantity
          <input
            type="text"
            list={LIST}
            autocomplete="off"
            value={chosen}
            onInput={(event) => choose(event.currentTarget.value)}
          />
        </label>
        <button
          type="button"
          disabled={found === undefined || rows.some(({ id }) => id === found.id)}
          onClick={() => {
            setDraft({ id: found!.id, text: "" });
            choose("");
          }}
        >
          Add this aim
        </button>
      </div>
    </div>
  );
}
