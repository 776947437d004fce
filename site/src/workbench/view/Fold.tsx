import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";

interface Props {
  readonly class: string;
  readonly summary: ComponentChildren;
  /** Whether it is open as long as nobody touched it. */
  readonly usual?: boolean;
  /** Open whatever a person chose: for paper, or for what was looked for. */
  readonly forced: boolean;
  /** Made only once it is open: a report has hundreds of these. */
  readonly children: () => ComponentChildren;
}

/** Something that unfolds, and costs nothing while it is folded. */
export function Fold({ class: name, summary, usual = false, forced, children }: Props) {
  const [chosen, choose] = useState<boolean | undefined>(undefined);
  const open = forced || (chosen ?? usual);
  return (
    <details
      class={name}
      open={open}
      onToggle={(event) => {
        // What was unfolded here comes back as the same event: only a person makes it differ.
        if (!forced && event.currentTarget.open !== open) choose(event.currentTarget.open);
      }}
    >
      <summary>{summary}</summary>
      {open && children()}
    </details>
  );
}
