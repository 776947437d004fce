import type { BenchActions } from "../state/BenchActions.ts";
import type { BenchState } from "../state/BenchState.ts";
import { later } from "./later.tsx";

interface Props {
  readonly rule: string;
  readonly title: string;
  /** The build on the bench once it was asked for; undefined before. */
  readonly state: BenchState | undefined;
  readonly ask: (rule: string) => void;
  readonly actions: BenchActions;
}

const RemedyPanel = later(async () => (await import("./choosing/RemedyPanel.tsx")).default);

/** The button that asks what would make a finding hold, and the answer under it. */
export function Remedies({ rule, title, state, ask, actions }: Props) {
  return (
    <>
      <p class="needs">
        <button type="button" aria-expanded={state !== undefined} onClick={() => ask(rule)}>
          What would make it hold?<span class="sr-only"> {title}</span>
        </button>
      </p>
      {state !== undefined && <RemedyPanel rule={rule} title={title} state={state} actions={actions} />}
    </>
  );
}
