import { Component } from "preact";
import { VerdictMark } from "../../components/VerdictMark.tsx";
import { href } from "../../data/href.ts";
import type { Entry, ItemView, Trouble } from "../protocol.ts";
import type { BenchActions } from "../state/BenchActions.ts";
import type { BenchState } from "../state/BenchState.ts";
import { ConfirmForm } from "./ConfirmForm.tsx";
import { Fold } from "./Fold.tsx";
import { LineList } from "./LineList.tsx";
import { later } from "./later.tsx";
import { Markup } from "./Markup.tsx";
import { Remedies } from "./Remedies.tsx";

const NumberPanel = later(async () => (await import("./numbers/NumberPanel.tsx")).default);

interface Props {
  readonly item: ItemView;
  /** Label of an entry's field, or undefined for what is no field. */
  readonly nameOf: (path: string) => string | undefined;
  /** Goes to the field of an entry. */
  readonly goTo: (path: string) => void;
  /** What a person said of it so far, and what is wrong with that. */
  readonly said: Entry | undefined;
  readonly troubles: readonly Trouble[];
  /** The build on the bench, where it was asked what would make the finding hold. */
  readonly asking: BenchState | undefined;
  readonly ask: (rule: string) => void;
  readonly actions: BenchActions;
  readonly printing: boolean;
}

/** All that a finding says, with ways to the fields that would settle it. */
function FindingBody({ item, nameOf, goTo, said, troubles, asking, ask, actions }: Props) {
  const { id, word, lines, needs = [], spread, numbers } = item;
  const entries = needs.flatMap((path) => {
    const label = nameOf(path);
    return label === undefined ? [] : [{ path, label }];
  });
  return (
    <>
      <LineList lines={lines[0]?.label === word ? lines.slice(1) : lines} />
      {lines.length === 0 && (
        <p class="quiet">Its numbers come in a moment: they are being worked out here.</p>
      )}
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
      {numbers !== undefined && (
        <Fold
          class="more"
          remember={`number of ${id}`}
          summary={
            <>
              How the number comes about<span class="sr-only">: {item.title}</span>
            </>
          }
          forced={false}
        >
          {() => <NumberPanel ids={numbers} goTo={goTo} />}
        </Fold>
      )}
      {item.confirmation !== undefined && (
        <ConfirmForm path={item.confirmation} entry={said} troubles={troubles} actions={actions} />
      )}
      {(word === "fails" || word === "open") && id !== undefined && (
        <Remedies rule={id} title={item.title} state={asking} ask={ask} actions={actions} />
      )}
      {word !== undefined && id !== undefined && (
        <p class="rule-link">
          <a href={href(`/rules/${id}/`)}>The rule, its reason and its sources</a>
        </p>
      )}
    </>
  );
}

/** Verdicts that ask something: on paper all that they say is printed, of others the numbers at a glance. */
const ASKING: ReadonlySet<string | undefined> = new Set(["fails", "open", "unknown", "pending"]);

/** One finding: its verdict and numbers at a glance, everything else when it is opened. */
function Finding(props: Props) {
  const { title, word, weight, work, glance } = props.item;
  const summary = (
    <>
      {word !== undefined && <VerdictMark word={word} />}
      <span class="title">{title}</span>
      {weight !== undefined && (
        <span class="quiet kind">
          {weight} · {work}
        </span>
      )}
      {glance !== undefined && <span class="glance number">{glance}</span>}
    </>
  );
  return (
    <Fold
      class="finding"
      remember={`finding ${props.item.id ?? title}`}
      summary={summary}
      forced={props.printing && ASKING.has(word)}
    >
      {() => <FindingBody {...props} />}
    </Fold>
  );
}

/** The same, drawn anew only where something of it changed: a report has hundreds, a keystroke changes few. */
export class FindingItem extends Component<Props> {
  override shouldComponentUpdate(next: Props): boolean {
    return (Object.keys(next) as (keyof Props)[]).some((key) => next[key] !== this.props[key]);
  }

  override render() {
    return <Finding {...this.props} />;
  }
}
