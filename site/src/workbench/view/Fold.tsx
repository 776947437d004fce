import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";

interface Props {
  readonly class: string;
  readonly summary: ComponentChildren;
  /** Whether it is open as long as nobody touched it. */
  readonly usual?: boolean;
  /** Open whatever a person chose: for paper, or for what was looked for. */
  readonly forced: boolean;
  /** What it is called, where it is to be as it was left when it comes back in another place. */
  readonly remember?: string;
  /** Made only once it is open: a report has hundreds of these. */
  readonly children: () => ComponentChildren;
}

/** How folds were left by a person. */
const left = new Map<string, boolean>();

/** Something that unfolds, and costs nothing while it is folded. */
export function Fold({ class: name, summary, usual = false, forced, remember = "", children }: Props) {
  const [chosen, choose] = useState(() => left.get(remember));
  const open = forced || (chosen ?? usual);
  return (
    <details
      class={name}
      open={open}
      onToggle={(event) => {
        // What was unfolded here comes back as the same event: only a person makes it differ.
        if (!forced && event.currentTarget.open !== open) {
          choose(event.currentTarget.open);
          if (remember !== "") left.set(remember, event.currentTarget.open);
        }
      }}
    >
      <summary>{summary}</summary>
      {open && children()}
    </details>
  );
}
