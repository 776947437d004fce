import type { ComponentChildren } from "preact";
import { useId, useRef } from "preact/hooks";

export interface Tab {
  readonly id: string;
  readonly label: string;
  readonly content: () => ComponentChildren;
}

interface Props {
  readonly label: string;
  readonly tabs: readonly Tab[];
  readonly chosen: string;
  readonly choose: (id: string) => void;
}

const MOVES: Readonly<Record<string, (at: number, count: number) => number>> = {
  ArrowRight: (at, count) => (at + 1) % count,
  ArrowLeft: (at, count) => (at + count - 1) % count,
  Home: () => 0,
  End: (_, count) => count - 1,
};

/** Panels of which one is shown; arrow keys go from one to the next. */
export function Tabs({ label, tabs, chosen, choose }: Props) {
  const base = useId();
  const list = useRef<HTMLDivElement>(null);
  const shown = tabs.find(({ id }) => id === chosen) ?? tabs[0]!;
  const onKeyDown = (event: KeyboardEvent) => {
    const move = MOVES[event.key];
    if (move === undefined) return;
    event.preventDefault();
    const next = move(tabs.indexOf(shown), tabs.length);
    choose(tabs[next]!.id);
    list.current?.querySelectorAll<HTMLElement>("[role=tab]")[next]?.focus();
  };
  return (
    <div class="tabs">
      <div ref={list} role="tablist" aria-label={label} onKeyDown={onKeyDown}>
        {tabs.map((tab) => (
          <button
            key={tab.id}
            type="button"
            role="tab"
            id={`${base}-${tab.id}`}
            aria-controls={`${base}-panel`}
            aria-selected={tab === shown}
            tabIndex={tab === shown ? 0 : -1}
            onClick={() => choose(tab.id)}
          >
            {tab.label}
          </button>
        ))}
      </div>
      <div role="tabpanel" id={`${base}-panel`} aria-labelledby={`${base}-${shown.id}`}>
        {shown.content()}
      </div>
    </div>
  );
}
