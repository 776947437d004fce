import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { VerdictMark } from "../../../components/VerdictMark.tsx";
import { href } from "../../../data/href.ts";
import type { Both, CausesView, PairView } from "../../pairProtocol.ts";
import type { CountWord } from "../../protocol.ts";
import { marks } from "../marks.ts";

interface Props {
  readonly pair: Extract<PairView, { state: "compared" }>;
  /** Where the other build comes from. */
  readonly from: string;
  /** Whether it is about both builds as they are now. */
  readonly current: boolean;
  readonly goTo: (path: string) => void;
}

/** So many rows of a group are shown before somebody asks for all. */
const FIRST = 12;
const BENCH = "This build";
const OTHER = "The other";

const ofEach = (make: (at: 0 | 1) => ComponentChildren): Both<ComponentChildren> => [make(0), make(1)];

interface RowProps {
  readonly head: ComponentChildren;
  readonly cells: Both<ComponentChildren>;
  readonly differs: ComponentChildren;
}

/** What it is, how it stands in each build, and what differs. On a phone each cell says whose it is. */
function Row({ head, cells, differs }: RowProps) {
  return (
    <tr>
      <th scope="row">{head}</th>
      {cells.map((cell, at) => (
        <td key={at} class="number">
          <span class="whose" aria-hidden="true">
            {at === 0 ? BENCH : OTHER}
          </span>
          {cell}
        </td>
      ))}
      <td class="differs">{differs}</td>
    </tr>
  );
}

interface GroupProps<T> {
  readonly heading: string;
  /** What is said where nothing differs. */
  readonly none: string;
  readonly all: readonly T[];
  readonly row: (one: T) => ComponentChildren;
}

/** Rows that belong together, the first of them until all are asked for. */
function Group<T>({ heading, none, all, row }: GroupProps<T>) {
  const [whole, setWhole] = useState(false);
  const shown = whole ? all : all.slice(0, FIRST);
  return (
    <tbody>
      <tr class="group">
        <th scope="rowgroup" colSpan={4}>
          {heading}
        </th>
      </tr>
      {all.length === 0 && (
        <tr>
          <td colSpan={4} class="quiet">
            {none}
          </td>
        </tr>
      )}
      {shown.map(row)}
      {all.length > FIRST && (
        <tr class="rest">
          <td colSpan={4}>
            <button type="button" class="link" aria-expanded={whole} onClick={() => setWhole(!whole)}>
              {whole ? `Show the first ${FIRST}` : `Show all ${all.length}`}
              <span class="sr-only"> of: {heading}</span>
            </button>
          </td>
        </tr>
      )}
    </tbody>
  );
}

function Causes({ causes, others, goTo }: CausesView & Pick<Props, "goTo">) {
  if (causes.length === 0) return null;
  return (
    <ul class="causes plain-list">
      {causes.map(({ path, label, text }) => (
        <li key={`${path} ${text}`}>
          <button type="button" class="link" onClick={() => goTo(path)}>
            {label}
          </button>
          {text !== undefined && <span class="effect number">{text}</span>}
        </li>
      ))}
      {others > 0 && <li class="quiet">and {others} more</li>}
    </ul>
  );
}

const counted = ([bench, other]: Both<number>): string =>
  bench === other ? "" : bench > other ? `${bench - other} more` : `${other - bench} fewer`;

/** Both builds in one table: how they stand, then the sizes, verdicts and numbers that differ. */
export function PairTable({ pair, from, current, goTo }: Props) {
  const { sides, notes, sizes, verdicts, numbers } = pair;
  const [bench, other] = sides;
  const words = (Object.keys(marks) as CountWord[]).filter((word) => word !== "pending");
  const sound = (yes: boolean) => (yes ? "sound" : "not sound");
  return (
    <>
      {notes.map((text) => (
        <p class="trouble" key={text}>
          {text}
        </p>
      ))}
      <table class={`pair ${current ? "" : "older"}`} aria-busy={!current}>
        <caption class="sr-only">
          {bench.name} on the bench, and {other.name} ({from}) beside it
        </caption>
        <thead>
          <tr>
            <td />
            <th scope="col">
              <span class="quiet">{BENCH}</span> {bench.name}
            </th>
            <th scope="col">
              <span class="quiet">
                {OTHER}, {from}
              </span>{" "}
              {other.name}
            </th>
            <th scope="col">
              <span class="quiet">What differs</span>
            </th>
          </tr>
        </thead>
        <tbody>
          <tr class="group">
            <th scope="rowgroup" colSpan={4}>
              How they stand
            </th>
          </tr>
          <Row
            head="Every rule that stops a build holds"
            cells={[sound(bench.sound), sound(other.sound)]}
            differs=""
          />
          {words.map((word) => {
            const mark = marks[word];
            return (
              <Row
                key={word}
                head={mark === undefined ? "to be confirmed" : <VerdictMark word={mark} />}
                cells={[bench.counts[word], other.counts[word]]}
                differs={counted([bench.counts[word], other.counts[word]])}
              />
            );
          })}
        </tbody>
        <Group
          heading={`Sizes and words that differ (${sizes.length})`}
          none="All that was entered is the same."
          all={sizes}
          row={({ path, label, texts, taken, by }) => (
            <Row
              key={path}
              head={
                <button type="button" class="link" onClick={() => goTo(path)}>
                  {label}
                </button>
              }
              cells={ofEach((at) => (
                <>
                  {texts[at] ?? "–"}
                  {taken[at] !== undefined && <span class="quiet taken"> {taken[at]}</span>}
                </>
              ))}
              differs={by}
            />
          )}
        />
        <Group
          heading={`Findings whose verdict differs (${verdicts.length})`}
          none="Every rule says the same of both."
          all={verdicts}
          row={({ rule, title, weight, words: said, glances, causes, others }) => (
            <Row
              key={rule}
              head={
                <>
                  <a href={href(`/rules/${rule}/`)}>{title}</a> <span class="quiet">{weight}</span>
                </>
              }
              cells={ofEach((at) => (
                <>
                  <VerdictMark word={said[at]} />
                  {glances[at] !== undefined && <span class="glance">{glances[at]}</span>}
                </>
              ))}
              differs={<Causes causes={causes} others={others} goTo={goTo} />}
            />
          )}
        />
        <Group
          heading={`Numbers that rules compare, most moved first (${numbers.length})`}
          none="Every number that a rule compares is the same."
          all={numbers}
          row={({ id, name, texts, by, causes, others }) => (
            <Row
              key={id}
              head={<a href={href(`/quantities/${id}/`)}>{name}</a>}
              cells={texts}
              differs={
                <>
                  {by !== "" && <b class="number">{by}</b>}
                  <Causes causes={causes} others={others} goTo={goTo} />
                </>
              }
            />
          )}
        />
      </table>
    </>
  );
}
