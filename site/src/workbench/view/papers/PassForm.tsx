import { useState } from "preact/hooks";
import type { Gate, Override } from "trialfit/papers";

interface Props {
  /** What is held: a paper or a line of one. */
  readonly label: string;
  readonly gate: Gate;
  readonly override: Override | undefined;
  readonly pass: (override: Override | undefined) => void;
}

/** What something waits for, and the way to let it pass all the same: with a name and a reason, both printed on it. */
export function PassForm({ label, gate, override, pass }: Props) {
  const [by, setBy] = useState("");
  const [because, setBecause] = useState("");
  const waiting = (
    <ul class="waits">
      {gate.waitsFor.map((one) => (
        <li key={one}>{one}</li>
      ))}
    </ul>
  );
  if (override !== undefined)
    return (
      <div class="gate passed">
        <p>
          <b>Let pass by {override.by}:</b> {override.because}. Still open:
        </p>
        {waiting}
        <button type="button" onClick={() => pass(undefined)} aria-label={`Hold again: ${label}`}>
          Hold it again
        </button>
      </div>
    );
  return (
    <div class="gate">
      <p>
        <b>Held.</b> It waits for:
      </p>
      {waiting}
      <details class="more">
        <summary>
          Let it pass all the same<span class="sr-only">: {label}</span>
        </summary>
        <form
          class="pass"
          onSubmit={(event) => {
            event.preventDefault();
            pass({ by: by.trim(), because: because.trim() });
          }}
        >
          <p class="quiet">Name and reason are printed on the paper.</p>
          <label>
            Who lets it pass
            <input
              type="text"
              autocomplete="name"
              value={by}
              onInput={(event) => setBy(event.currentTarget.value)}
            />
          </label>
          <label>
            Why
            <input type="text" value={because} onInput={(event) => setBecause(event.currentTarget.value)} />
          </label>
          <button type="submit" disabled={by.trim() === "" || because.trim() === ""}>
            Let it pass
          </button>
        </form>
      </details>
    </div>
  );
}
