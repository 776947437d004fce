import "./choosing.css";
import type { BenchActions } from "../../state/BenchActions.ts";
import type { BenchState } from "../../state/BenchState.ts";
import { choosing, useChoosing } from "../../state/ChoosingStore.ts";
import { groundOf } from "./groundOf.ts";
import { SizesPanel } from "./SizesPanel.tsx";
import { TriedNote } from "./TriedNote.tsx";

interface Props {
  readonly state: BenchState;
  readonly actions: BenchActions;
  readonly nameOf: (path: string) => string | undefined;
  readonly goTo: (path: string) => void;
  /** Counted up when somebody wants to come here: the button takes the focus. */
  readonly called: number;
}

/** Sizes that are to be found, and what was put into the build of what was found. */
export default function ChoosingPanel({ state, actions, nameOf, goTo, called }: Props) {
  useChoosing();
  const { put, history } = state;
  const now = groundOf(state);
  // Before anything is drawn by it: the answer goes on being about the build with what was taken.
  if (put !== undefined && put.rule === undefined && history.last === put.by) choosing.take(now.text);
  const wanted = Object.entries(state.entries).flatMap(([path, entry]) =>
    entry.form === "wanted" ? [{ path, label: nameOf(path) ?? path, entry }] : [],
  );
  return (
    <>
      {put !== undefined && history.text !== undefined && (
        <TriedNote put={put} state={state} actions={actions} />
      )}
      {(wanted.length > 0 || choosing.isAbout(now)) && (
        <SizesPanel
          wanted={wanted}
          state={state}
          now={now}
          nameOf={nameOf}
          goTo={goTo}
          called={called}
          take={(sizes) =>
            actions.put({
              sizes,
              by: `found: ${sizes.map(({ path, text }) => `${path} ${text}`).join(", ")}`,
            })
          }
        />
      )}
    </>
  );
}
