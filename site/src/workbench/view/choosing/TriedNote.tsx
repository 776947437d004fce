import { useEffect, useRef } from "preact/hooks";
import { VerdictMark } from "../../../components/VerdictMark.tsx";
import type { ReportView } from "../../protocol.ts";
import type { BenchActions } from "../../state/BenchActions.ts";
import type { BenchState, Put } from "../../state/BenchState.ts";

interface Props {
  readonly put: Put;
  readonly state: BenchState;
  readonly actions: BenchActions;
}

const wordOf = (report: ReportView | undefined, rule: string) =>
  report?.sections.flatMap(({ items }) => items).find(({ id }) => id === rule)?.word;

/** What was put in last, what its finding says now, and the way back. It takes the focus where the button moved away. */
export function TriedNote({ put, state, actions }: Props) {
  const note = useRef<HTMLElement>(null);
  const { sizes, rule, by } = put;
  useEffect(() => {
    if (rule === undefined) return;
    note.current?.scrollIntoView({ block: "center" });
    note.current?.focus({ preventScroll: true });
  }, [put]);
  const stands = state.history.last === by;
  const word = rule === undefined || !state.done ? undefined : wordOf(state.report, rule.id);
  return (
    <section class="tried" ref={note} tabIndex={-1} aria-label="What was put in">
      <p role="status">
        <b>{stands ? (rule === undefined ? "Taken" : "Tried") : "Not the last change any more"}:</b>{" "}
        {sizes.map(({ label, text }) => `${label} ${text}`).join("; ")}.{" "}
        {stands && rule !== undefined && (
          <>
            {word === undefined ? "Being judged… " : <VerdictMark word={word} />} {rule.title}
          </>
        )}
      </p>
      {stands && (
        <button
          type="button"
          onClick={() => {
            actions.undo();
            note.current?.focus();
          }}
        >
          Take it back
        </button>
      )}
    </section>
  );
}
