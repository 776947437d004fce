import type { Provenance } from "trialfit";
import type { RemedyItem, SizeText } from "../../choosingProtocol.ts";
import { RuleWords } from "./RuleWords.tsx";

interface Props {
  readonly remedy: RemedyItem;
  /** Whether it is about the build as it is now. */
  readonly isAbout: boolean;
  readonly put: (size: SizeText) => void;
}

/** What is to be said of where the size that stands there comes from. */
const known: Readonly<Partial<Record<Provenance, string>>> = {
  assumed: "assumed, since the build does not say it",
  measured: "measured; the new size is to be measured again",
};

/** One change: the work, the size before and after, what else it does, and a button that tries it. */
export function RemedyRow({ remedy, isAbout, put }: Props) {
  const { path, label, work, was, provenance, text, by, beside } = remedy;
  const how = known[provenance];
  return (
    <li>
      <p>
        <b class="label">{work}</b>
        <b>{label}</b>
      </p>
      <p class="number">
        {text === undefined ? (
          by
        ) : (
          <>
            <span class="sr-only">from </span>
            {was} <span aria-hidden="true">→</span>
            <span class="sr-only">to</span> <b>{text}</b> <span class="quiet">({by})</span>
          </>
        )}
      </p>
      {how !== undefined && <p class="quiet">Now {how}.</p>}
      {beside.map((words) => (
        <p key={words} class="quiet">
          <RuleWords text={words} />
        </p>
      ))}
      {text === undefined ? (
        <p class="quiet">It was measured place by place: measure each again after the work.</p>
      ) : (
        <button
          type="button"
          aria-disabled={!isAbout}
          aria-label={`Try this change: ${label} ${text}`}
          onClick={() => isAbout && put({ path, label, text })}
        >
          Try this change
        </button>
      )}
    </li>
  );
}
