import { useState } from "preact/hooks";
import type { DemoText, FormData } from "../protocol.ts";
import type { BenchActions } from "../state/BenchActions.ts";
import type { BenchState } from "../state/BenchState.ts";
import { packText } from "../state/packText.ts";
import { OpenBuild } from "./OpenBuild.tsx";
import { saveFile } from "./saveFile.ts";

interface Props {
  readonly form: FormData;
  readonly demos: readonly DemoText[];
  readonly state: BenchState;
  readonly actions: BenchActions;
}

/** Longer addresses are cut by some programs that pass them on. */
const LONG_LINK = 8000;

function save(text: string, name: string): void {
  const word = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  saveFile(text, `${word === "" ? "build" : word}.yaml`, "application/yaml");
}

/** What can be done with the build as a whole. */
export function Toolbar({ form, demos, state, actions }: Props) {
  const [said, setSaid] = useState("");
  const { history, options, name } = state;
  const share = async () => {
    const packed = await packText(history.text ?? "");
    const link = `${location.origin}${location.pathname}#build=${packed}`;
    const length =
      link.length > LONG_LINK ? ` It is ${link.length} letters long; some programs cut that.` : "";
    try {
      await navigator.clipboard.writeText(link);
      setSaid(`The link is copied. It holds the whole build; no server does.${length}`);
    } catch {
      globalThis.history.replaceState(null, "", link);
      setSaid(`The address of this page now holds the whole build: copy it.${length}`);
    }
  };
  return (
    <div class="toolbar">
      <OpenBuild demos={demos} actions={actions} />
      <button type="button" disabled={!history.canUndo} onClick={actions.undo}>
        Undo
      </button>
      <button type="button" disabled={!history.canRedo} onClick={actions.redo}>
        Redo
      </button>
      <button type="button" onClick={() => save(history.text ?? "", name)}>
        Save the file
      </button>
      <button type="button" onClick={share}>
        Copy a link
      </button>
      <button type="button" onClick={() => print()}>
        Print
      </button>
      <label>
        Stage
        <select
          value={options.stage ?? ""}
          onChange={(event) => {
            const stage = form.stages.find(({ id }) => id === event.currentTarget.value)?.id;
            actions.judge({ ...options, stage: stage as typeof options.stage });
          }}
        >
          <option value="">every stage</option>
          {form.stages.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </select>
      </label>
      <label>
        Limits
        <select
          value={options.set ?? ""}
          onChange={(event) => actions.judge({ ...options, set: event.currentTarget.value || undefined })}
        >
          <option value="">for the use that the build states</option>
          {form.sets.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </select>
      </label>
      <p class="said" role="status">
        {said}
      </p>
    </div>
  );
}
