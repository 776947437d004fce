import type { ItemView } from "../protocol.ts";
import { LabelledSelect } from "./LabelledSelect.tsx";

/** What findings are narrowed to. */
export interface Narrowing {
  readonly words: string;
  /** Id of a part, or empty for all. */
  readonly part: string;
  readonly verdict: keyof typeof verdicts;
}

export const everyFinding: Narrowing = { words: "", part: "", verdict: "every" };

/** Whether nobody has looked yet at what only a person can see. */
const isToConfirm = ({ word, confirmation }: ItemView): boolean =>
  confirmation !== undefined && word === "unknown";

/** Verdicts that are looked at together. */
const verdicts = {
  every: { label: "every verdict", has: () => true },
  asking: {
    label: "what fails, is open or unknown",
    has: (item: ItemView) => item.word !== "holds" && item.word !== "not-applicable" && !isToConfirm(item),
  },
  confirm: { label: "what a person has to look at", has: isToConfirm },
  holds: { label: "what holds", has: ({ word }: ItemView) => word === "holds" },
} as const;

const verdictOptions = Object.entries(verdicts).map(([id, { label }]) => ({ id, label }));

export const isNarrowed = ({ words, part, verdict }: Narrowing): boolean =>
  words.trim() !== "" || part !== "" || verdict !== "every";

/** Whether a finding is among those; what is no finding, as an assumption, stays whatever verdict is looked at. */
export function isAmong(item: ItemView, { words, part, verdict }: Narrowing): boolean {
  if (item.word !== undefined && !verdicts[verdict].has(item)) return false;
  if (part !== "" && !(item.parts ?? []).includes(part)) return false;
  const text = `${item.title} ${item.id ?? ""} ${item.word ?? ""} ${item.lines.map((line) => line.text).join(" ")}`;
  const lower = text.toLowerCase();
  return words
    .toLowerCase()
    .split(/\s+/)
    .filter(Boolean)
    .every((word) => lower.includes(word));
}

interface Props {
  readonly parts: readonly { readonly id: string; readonly label: string }[];
  readonly to: Narrowing;
  readonly change: (to: Narrowing) => void;
}

/** Which findings are shown, and printed: words in them, a part, a verdict. */
export function NarrowFindings({ parts, to, change }: Props) {
  return (
    <search class="narrow" aria-label="Findings">
      <label>
        Words
        <input
          type="search"
          value={to.words}
          onInput={(event) => change({ ...to, words: event.currentTarget.value })}
        />
      </label>
      <LabelledSelect
        label="Part"
        value={to.part}
        options={[{ id: "", label: "every part" }, ...parts]}
        choose={(part) => change({ ...to, part })}
      />
      <LabelledSelect
        label="Verdict"
        value={to.verdict}
        options={verdictOptions}
        choose={(verdict) => change({ ...to, verdict: verdict as Narrowing["verdict"] })}
      />
    </search>
  );
}
