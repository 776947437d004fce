import { useState } from "preact/hooks";
import type { DemoText } from "../../protocol.ts";
import type { BenchActions } from "../../state/BenchActions.ts";
import type { BenchState } from "../../state/BenchState.ts";
import { BUILD_FILES, FileButton } from "../FileButton.tsx";

interface Props {
  readonly demos: readonly DemoText[];
  readonly state: BenchState;
  readonly actions: BenchActions;
}

/** What stands beside the build on the bench: a demo, a kept state, a file, a text. */
export function BesideForm({ demos, state, actions }: Props) {
  const { beside, kept } = state;
  const [pasted, paste] = useState("");
  const choices = [
    ...kept.map((one) => ({ ...one, label: `this build, ${one.from}` })),
    ...demos.map(({ name, text }) => ({ text, from: "a demo, invented", label: `${name} (invented)` })),
  ];
  return (
    <section class="beside-form" aria-label="What stands beside this build">
      <p>
        Put another build beside this one, change what you like here, and see which sizes, numbers and
        verdicts differ, and why.
      </p>
      <div class="row">
        <label>
          Beside this build
          <select
            value=""
            onChange={(event) => {
              const chosen = choices[Number(event.currentTarget.value)];
              event.currentTarget.value = "";
              if (chosen !== undefined) actions.compare({ text: chosen.text, from: chosen.from });
            }}
          >
            <option value="">choose one…</option>
            {choices.map(({ label }, at) => (
              <option key={label} value={at}>
                {label}
              </option>
            ))}
          </select>
        </label>
        <button type="button" onClick={actions.keep}>
          Keep it as it is now
        </button>
        <FileButton
          accept={BUILD_FILES}
          take={(text, from) => actions.compare({ text, from })}
          refuse={actions.refuse}
        >
          Compare with a file…
        </FileButton>
        {beside !== undefined && (
          <>
            <button type="button" onClick={actions.swap}>
              Swap
            </button>
            <button type="button" onClick={() => actions.compare(undefined)}>
              Stop comparing
            </button>
          </>
        )}
      </div>
      <details class="more">
        <summary>Paste a build</summary>
        <label for="pasted-build">The text of the other build file</label>
        <textarea
          id="pasted-build"
          rows={6}
          spellcheck={false}
          value={pasted}
          onInput={(event) => paste(event.currentTarget.value)}
        />
        <button
          type="button"
          disabled={pasted.trim() === ""}
          onClick={() => actions.compare({ text: pasted, from: "pasted" })}
        >
          Compare with this text
        </button>
      </details>
    </section>
  );
}
