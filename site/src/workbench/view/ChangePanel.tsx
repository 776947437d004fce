import type { BenchActions, BenchState } from "../state/useBench.ts";
import { DocumentPanel } from "./DocumentPanel.tsx";

interface Props {
  readonly state: BenchState;
  readonly actions: BenchActions;
}

/** Two states of the build side by side: what changed between them, and why. */
export function ChangePanel({ state, actions }: Props) {
  const { held, change, history } = state;
  const load = async (file: File | undefined) => file !== undefined && actions.hold(await file.text());
  return (
    <div class="change">
      <p>
        Keep the build as it is now, change something, and see which values, numbers and verdicts moved, and
        what moved them.
      </p>
      <p class="row">
        <button type="button" onClick={() => actions.hold(history.text)}>
          {held === undefined
            ? "Compare with the build as it is now"
            : "Compare with the build as it is now instead"}
        </button>
        <label class="file-button">
          Compare with a file…
          <input
            type="file"
            accept=".yaml,.yml,.json"
            onChange={(event) => load(event.currentTarget.files?.[0])}
          />
        </label>
        {held !== undefined && (
          <>
            <button
              type="button"
              onClick={() => actions.open(held, "build.yaml", "going back to what was kept")}
            >
              Go back to it
            </button>
            <button type="button" onClick={() => actions.hold(undefined)}>
              Stop comparing
            </button>
          </>
        )}
      </p>
      {held !== undefined && change === undefined && <p role="status">Comparing…</p>}
      {change !== undefined && <DocumentPanel view={change} />}
    </div>
  );
}
