import { useCallback, useMemo, useState } from "preact/hooks";
import type { ReportView, Trouble } from "../protocol.ts";
import type { BenchActions } from "../state/BenchActions.ts";
import type { BenchState } from "../state/BenchState.ts";
import { FindingItem } from "./FindingItem.tsx";
import { Fold } from "./Fold.tsx";
import { everyFinding, isAmong, isNarrowed, NarrowFindings } from "./NarrowFindings.tsx";
import { useGrowing } from "./useGrowing.ts";
import { usePrinting } from "./usePrinting.ts";

interface Props {
  readonly report: ReportView;
  readonly parts: readonly { readonly id: string; readonly label: string }[];
  readonly nameOf: (path: string) => string | undefined;
  readonly goTo: (path: string) => void;
  readonly state: BenchState;
  readonly actions: BenchActions;
}

/** Sections longer than this begin folded, so that what asks for something comes first. */
const LONG = 40;

/** What a section is called whatever it holds: it stays the same section when that changes. */
const withoutCount = (heading: string): string => heading.replace(/ \(\d+\)$/, "");

const NONE: readonly Trouble[] = [];

/** What is wrong with an entry; the same list each time where nothing is. */
function troublesOf({ troubles }: BenchState, path: string | undefined): readonly Trouble[] {
  const own = path === undefined ? NONE : troubles.filter((one) => one.path === path);
  return own.length === 0 ? NONE : own;
}

/** Every finding of the report, grouped by the work that it asks for. */
export function FindingList({ report, parts, state, ...rest }: Props) {
  const printing = usePrinting();
  const [to, narrow] = useState(everyFinding);
  const [asked, setAsked] = useState<readonly string[]>([]);
  const ask = useCallback(
    (rule: string) =>
      setAsked((all) => (all.includes(rule) ? all.filter((one) => one !== rule) : [...all, rule])),
    [],
  );
  const narrowed = isNarrowed(to);
  const sections = useMemo(
    () =>
      report.sections
        .map((section) => ({
          ...section,
          shown: section.items.filter((item) => isAmong(item, to)),
        }))
        .filter(({ shown }) => shown.length > 0),
    [report, to],
  );
  const allCount = report.sections.reduce((sum, { items }) => sum + items.length, 0);
  const shownCount = sections.reduce((sum, { shown }) => sum + shown.length, 0);
  const drawn = useGrowing(sections.length, printing || narrowed);
  return (
    <div class="findings">
      <NarrowFindings parts={parts} to={to} change={narrow} />
      {narrowed && (
        <p class="quiet">
          {shownCount} of {allCount} entries are shown, and printed.
        </p>
      )}
      {sections.length === 0 && <p role="status">No finding is among these.</p>}
      {sections.slice(0, drawn).map(({ heading, intro, items, shown }) => (
        <Fold
          class="section"
          key={withoutCount(heading)}
          usual={items.length <= LONG}
          forced={narrowed || printing}
          summary={
            <>
              <h3>{heading}</h3>
              {narrowed && <span class="quiet">{shown.length} shown</span>}
            </>
          }
        >
          {() => (
            <>
              {intro !== undefined && <p class="quiet">{intro}</p>}
              {shown.map((item) => (
                <FindingItem
                  key={item.id ?? item.title}
                  item={item}
                  said={item.confirmation === undefined ? undefined : state.entries[item.confirmation]}
                  troubles={troublesOf(state, item.confirmation)}
                  printing={printing}
                  asking={asked.includes(item.id ?? "") ? state : undefined}
                  ask={ask}
                  {...rest}
                />
              ))}
            </>
          )}
        </Fold>
      ))}
      {report.closing.map((text) => (
        <p class="quiet" key={text}>
          {text}
        </p>
      ))}
    </div>
  );
}
