import type { PaperPurpose } from "trialfit/papers";
import type { PaperOrder } from "../../deskProtocol.ts";

interface Props {
  readonly papers: readonly PaperPurpose[];
  readonly order: PaperOrder;
  /** Whether a state before is kept, so that there is a change to record. */
  readonly compared: boolean;
  readonly busy: boolean;
  readonly change: (order: Partial<PaperOrder>) => void;
  readonly write: () => void;
}

const units = {
  written: "as the build writes them",
  metric: "metric",
  inch: "inch",
  both: "metric and inch side by side",
} as const satisfies Record<PaperOrder["units"], string>;

const sizes = { A4: "A4", Letter: "Letter" } as const satisfies Record<PaperOrder["size"], string>;

const isKey = <T extends object>(table: T, word: string): word is Extract<keyof T, string> => word in table;

/** Which papers, in which units, on which paper. */
export function PaperOrderForm({ papers, order, compared, busy, change, write }: Props) {
  const { only } = order;
  const chosen = new Set(only);
  const choose = (id: string, on: boolean) =>
    change({ only: papers.filter((one) => (one.id === id ? on : chosen.has(one.id))).map((one) => one.id) });
  const choice = <T extends Readonly<Record<string, string>>>(
    label: string,
    table: T,
    value: keyof T & string,
    set: (word: keyof T & string) => void,
  ) => (
    <label>
      {label}
      <select
        value={value}
        onChange={({ currentTarget }) => isKey(table, currentTarget.value) && set(currentTarget.value)}
      >
        {Object.entries(table).map(([id, words]) => (
          <option key={id} value={id}>
            {words}
          </option>
        ))}
      </select>
    </label>
  );
  return (
    <form
      class="paper-order"
      onSubmit={(event) => {
        event.preventDefault();
        write();
      }}
    >
      <fieldset>
        <legend>Which papers</legend>
        <p class="row">
          <button type="button" onClick={() => change({ only: papers.map(({ id }) => id) })}>
            All of them
          </button>
          <button type="button" onClick={() => change({ only: [] })}>
            None
          </button>
        </p>
        <ul class="purposes">
          {papers.map(({ id, title, purpose }) => (
            <li key={id}>
              <label>
                <input
                  type="checkbox"
                  checked={chosen.has(id)}
                  aria-describedby={`paper-${id}`}
                  onChange={(event) => choose(id, event.currentTarget.checked)}
                />
                {title}
              </label>
              <p class="quiet" id={`paper-${id}`}>
                {purpose}
                {id === "change-record" &&
                  !compared &&
                  " It needs a state before: keep one under Compare, then change something."}
              </p>
            </li>
          ))}
        </ul>
      </fieldset>
      <div class="row">
        {choice("Numbers", units, order.units, (word) => change({ units: word }))}
        {choice("Paper", sizes, order.size, (word) => change({ size: word }))}
        <label>
          Revision
          <input
            type="text"
            class="short"
            value={order.revision}
            onInput={(event) => change({ revision: event.currentTarget.value })}
          />
        </label>
        <label>
          Day
          <input
            type="date"
            required
            value={order.date}
            onInput={(event) => change({ date: event.currentTarget.value })}
          />
        </label>
        <button type="submit" class="main" disabled={only.length === 0}>
          {busy ? "Write anew" : "Write the papers"}
        </button>
      </div>
    </form>
  );
}
