import { useState } from "preact/hooks";
import type { DemoText, FormData } from "../protocol.ts";
import type { BenchActions } from "../state/BenchActions.ts";
import type { BenchState } from "../state/BenchState.ts";
import { packText } from "../state/packText.ts";
import { LabelledSelect } from "./LabelledSelect.tsx";
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
      <LabelledSelect
        label="Stage"
        value={options.stage ?? ""}
        options={[{ id: "", label: "every stage" }, ...form.stages]}
        choose={(chosen) => {
          const stage = form.stages.find(({ id }) => id === chosen)?.id;
          actions.judge({ ...options, stage: stage as typeof options.stage });
        }}
      />
      <LabelledSelect
        label="Limits"
        value={options.set ?? ""}
        options={[{ id: "", label: "for the use that the build states" }, ...form.sets]}
        choose={(set) => actions.judge({ ...options, set: set || undefined })}
      />
      <p class="said" role="status">
        {said}
      </p>
    </div>
  );
}
