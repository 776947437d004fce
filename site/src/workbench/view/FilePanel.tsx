import { useState } from "preact/hooks";
import type { BenchActions } from "../state/BenchActions.ts";
import type { BenchState } from "../state/BenchState.ts";
import { forgetBuilds } from "../state/keptBuilds.ts";

interface Props {
  readonly state: BenchState;
  readonly actions: BenchActions;
  /** What was written here and not used yet; it stays while other views are looked at. */
  readonly draft: string | undefined;
  readonly setDraft: (text: string | undefined) => void;
}

/** The build file itself, to read, correct and copy. */
export function FilePanel({ state, actions, draft, setDraft }: Props) {
  const { history, troubles } = state;
  const [forgotten, setForgotten] = useState(false);
  const text = draft ?? history.text ?? "";
  const changed = text !== (history.text ?? "");
  return (
    <div class="file">
      <label for="file-text">The build file, as it will be saved</label>
      <textarea
        id="file-text"
        spellcheck={false}
        value={text}
        rows={28}
        aria-describedby={troubles.length > 0 ? "file-troubles" : undefined}
        onInput={(event) => setDraft(event.currentTarget.value)}
      />
      <p role="status">
        {changed && "This text is not used yet: judged and saved is the build as it was before."}
      </p>
      <p class="row">
        <button type="button" disabled={!changed} onClick={() => actions.rewrite(text)}>
          Use this text
        </button>
        <button type="button" disabled={!changed} onClick={() => setDraft(undefined)}>
          Put back what it was
        </button>
      </p>
      {troubles.length > 0 && (
        <ul id="file-troubles" class="troubles">
          {troubles.map(({ line, text }) => (
            <li key={`${line} ${text}`}>
              {line !== undefined && <b>line {line}: </b>}
              {text}
            </li>
          ))}
        </ul>
      )}
      <p class="quiet">
        This browser keeps the last twelve builds that were on the bench, each as it was last; nobody else
        sees them. On a machine that is not yours:{" "}
        <button
          type="button"
          class="link"
          onClick={() => {
            forgetBuilds();
            setForgotten(true);
          }}
        >
          forget them
        </button>
        <span role="status">{forgotten ? " Forgotten. What you change from now on is kept again." : ""}</span>
      </p>
    </div>
  );
}
