import { useEffect, useState } from "preact/hooks";
import type { BenchActions, BenchState } from "../state/useBench.ts";

interface Props {
  readonly state: BenchState;
  readonly actions: BenchActions;
}

/** The build file itself, to read, correct and copy. */
export function FilePanel({ state, actions }: Props) {
  const { history, troubles } = state;
  const [text, setText] = useState(history.text ?? "");
  useEffect(() => setText(history.text ?? ""), [history.text]);
  const changed = text !== history.text;
  return (
    <div class="file">
      <label for="file-text">The build file, as it will be saved</label>
      <textarea
        id="file-text"
        spellcheck={false}
        value={text}
        rows={28}
        aria-describedby={troubles.length > 0 ? "file-troubles" : undefined}
        onInput={(event) => setText(event.currentTarget.value)}
      />
      <p class="row">
        <button
          type="button"
          disabled={!changed}
          onClick={() => actions.open(text, "build.yaml", "the file")}
        >
          Use this text
        </button>
        <button type="button" disabled={!changed} onClick={() => setText(history.text ?? "")}>
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
    </div>
  );
}
