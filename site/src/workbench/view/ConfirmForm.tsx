import { useState } from "preact/hooks";
import type { Entry, Trouble } from "../protocol.ts";
import type { BenchActions } from "../state/BenchActions.ts";

type Seen = Extract<Entry, { form: "seen" }>;

interface Props {
  readonly path: string;
  readonly entry: Entry | undefined;
  readonly troubles: readonly Trouble[];
  readonly actions: BenchActions;
}

const today = () => new Date().toISOString().slice(0, 10);

/** What a person saw, where no number tells: whether it was so, who looked, when and how. */
export function ConfirmForm({ path, entry, troubles, actions }: Props) {
  const kept: Seen =
    entry?.form === "seen" ? entry : { form: "seen", seen: "", by: "", on: today(), how: "" };
  const [draft, setDraft] = useState<Seen | undefined>(undefined);
  const shown = draft ?? kept;
  const change = (part: Partial<Seen>) => setDraft({ ...shown, ...part });
  const ready = shown.seen !== "" && shown.by.trim() !== "" && shown.on !== "" && shown.how.trim().length > 2;
  const box = (key: "by" | "on" | "how", label: string, type: string) => (
    <label>
      {label}
      <input
        type={type}
        value={shown[key]}
        onInput={(event) => change({ [key]: event.currentTarget.value })}
      />
    </label>
  );
  return (
    <>
      <p class="on-paper">
        seen: {shown.seen === "" ? "yes / no" : shown.seen}
        <span>by: {shown.by}</span>
        <span>on: {entry === undefined ? "" : shown.on}</span>
        <span class="long">how: {shown.how}</span>
      </p>
      <fieldset class="confirm">
        <legend>What was seen</legend>
        <label>
          Was it so?
          <select value={shown.seen} onChange={(event) => change({ seen: event.currentTarget.value })}>
            <option value="">not looked at yet</option>
            <option value="yes">yes</option>
            <option value="no">no</option>
          </select>
        </label>
        {box("by", "Who looked", "text")}
        {box("on", "On", "date")}
        {box("how", "With what, and what was read", "text")}
        <p class="row">
          <button
            type="button"
            disabled={draft === undefined || !ready}
            onClick={() => {
              actions.write(path, shown);
              setDraft(undefined);
            }}
          >
            Write it down
          </button>
          {entry !== undefined && (
            <button type="button" onClick={() => actions.write(path, undefined)}>
              Take it out
            </button>
          )}
        </p>
        {troubles.map(({ text }) => (
          <p class="trouble" key={text}>
            {text}
          </p>
        ))}
      </fieldset>
    </>
  );
}
