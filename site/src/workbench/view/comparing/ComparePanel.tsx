import "./comparing.css";
import type { DemoText } from "../../protocol.ts";
import type { BenchActions } from "../../state/BenchActions.ts";
import type { BenchState } from "../../state/BenchState.ts";
import { LineList } from "../LineList.tsx";
import { BesideForm } from "./BesideForm.tsx";
import { PairPictures } from "./PairPictures.tsx";
import { PairTable } from "./PairTable.tsx";

interface Props {
  readonly demos: readonly DemoText[];
  readonly state: BenchState;
  readonly actions: BenchActions;
  readonly goTo: (path: string) => void;
}

/** Two builds side by side: how each stands, what differs, and what that does. */
export default function ComparePanel({ demos, state, actions, goTo }: Props) {
  const { beside, pair, paired, report, done, history } = state;
  return (
    <div class="comparing">
      <BesideForm demos={demos} state={state} actions={actions} />
      {beside !== undefined && (
        <p role="status" class={paired ? "sr-only" : ""}>
          {paired
            ? "Both are compared as they are now."
            : done && report === undefined
              ? "The file on the bench cannot be read: see the File panel."
              : pair === undefined
                ? "Comparing…"
                : "Comparing… What stands below is about the build before."}
        </p>
      )}
      {beside !== undefined && pair?.state === "unread" && (
        <>
          <h3>The other build cannot be read</h3>
          <LineList lines={pair.lines} />
        </>
      )}
      {beside !== undefined && pair?.state === "compared" && (
        <>
          <PairTable pair={pair} from={beside.from} current={paired} goTo={goTo} />
          {history.text !== undefined && (
            <PairPictures
              texts={[history.text, beside.text]}
              names={[pair.sides[0].name, pair.sides[1].name]}
            />
          )}
        </>
      )}
    </div>
  );
}
