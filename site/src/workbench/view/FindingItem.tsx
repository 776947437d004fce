import { VerdictMark } from "../../components/VerdictMark.tsx";
import { href } from "../../data/href.ts";
import type { ItemView } from "../protocol.ts";
import type { BenchActions, BenchState } from "../state/useBench.ts";
import { ConfirmForm } from "./ConfirmForm.tsx";
import { LineList } from "./LineList.tsx";
import { Markup } from "./Markup.tsx";

interface Props {
  readonly item: ItemView;
  /** Label of an entry's field, or undefined for what is no field. */
  readonly nameOf: (path: string) => string | undefined;
  /** Goes to the field of an entry. */
  readonly goTo: (path: string) => void;
  readonly state: BenchState;
  readonly actions: BenchActions;
}

/** One finding: its verdict and numbers at a glance, everything else when it is opened. */
export function FindingItem({ item, nameOf, goTo, state, actions }: Props) {
  const { id, word, weight, work, lines, needs = [], spread } = item;
  const band = lines.find((line) => line.band !== undefined);
  const entries = needs.flatMap((path) => {
    const label = nameOf(path);
    return label === undefined ? [] : [{ path, label }];
  });
  return (
    <details class="finding">
      <summary>
        {word !== undefined && <VerdictMark word={word} />}
        <span class="title">{item.title}</span>
        {weight !== undefined && (
          <span class="quiet kind">
            {weight} · {work}
          </span>
        )}
        {band !== undefined && <span class="glance number">{band.text}</span>}
      </summary>
      <LineList lines={lines[0]?.label === word ? lines.slice(1) : lines} />
      {spread !== undefined && (
        <div class="spread">
          <b class="label">spread by</b>
          <Markup html={spread} />
        </div>
      )}
      {entries.length > 0 && (
        <p class="needs">
          <b class="label">go to</b>
          {entries.slice(0, 8).map(({ path, label }) => (
            <button key={path} type="button" class="link" onClick={() => goTo(path)}>
              {label}
            </button>
          ))}
        </p>
      )}
      {item.confirmation !== undefined && (
        <ConfirmForm
          path={item.confirmation}
          entry={state.entries[item.confirmation]}
          troubles={state.troubles.filter(({ path }) => path === item.confirmation)}
          actions={actions}
        />
      )}
      {word !== undefined && id !== undefined && (
        <p>
          <a href={href(`/rules/${id}/`)}>The rule, its reason and its sources</a>
        </p>
      )}
    </details>
  );
}
