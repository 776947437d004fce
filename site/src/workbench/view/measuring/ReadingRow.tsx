import { useEffect, useState } from "preact/hooks";
import type { VerdictWord } from "trialfit";
import type { Limits, PlannedPlace } from "trialfit/papers";
import { VerdictMark } from "../../../components/VerdictMark.tsx";
import type { FormField, Taking } from "../../protocol.ts";
import { decimal, shownReading } from "./filledRow.ts";
import { placeBetween } from "./standing.ts";

interface Props {
  readonly place: PlannedPlace;
  readonly field: FormField | undefined;
  readonly id: string;
  readonly limits: Limits | undefined;
  /** What came of the last reading here. */
  readonly taking: Taking | undefined;
  /** Takes a reading, with the reason of a correction or of one that is unlikely. */
  readonly take: (reading: string, because: string) => void;
  /** What of the place stands above the row already: `cylinder 3`. */
  readonly within: string;
  /** The gravest verdict of the rules that rest on the dimension. */
  readonly gravest: VerdictWord | "pending" | undefined;
}

/** A number and the word for its sign, where the dimension has words. */
function split(text: string, words: readonly string[]): readonly [number: string, word: string] {
  const word = words.find((one) => text.endsWith(` ${one}`));
  return word === undefined ? [text, ""] : [text.slice(0, -word.length - 1), word];
}

/** To the next box of a reading, as one goes from bore to bore. */
function goOn(box: HTMLElement): void {
  const boxes = [...document.querySelectorAll<HTMLElement>(".measuring .reading-box")];
  (boxes[boxes.indexOf(box) + 1] ?? box).focus();
}

/** One place where a reading is taken: a large box, what is predicted, and what came of it. */
export function ReadingRow({ place, field, id, limits, taking, take, within, gravest }: Props) {
  const { row, place: words, reading } = place;
  const { words: signs = [], range = [] } = field ?? {};
  const stored = shownReading(reading, row.unit);
  const [draft, setDraft] = useState<string | undefined>(undefined);
  const [sent, setSent] = useState<string | undefined>(undefined);
  const [because, setBecause] = useState("");
  // What another hand changed (undo, another file, the reading itself) outranks what was typed.
  useEffect(() => {
    setDraft(undefined);
    setBecause("");
  }, [reading, row.unit]);
  const shown = draft ?? stored;
  const [number, word] = split(shown, signs);
  const usualWord = split(stored === "" ? row.predicted : stored, signs)[1] || (signs[0] ?? "");
  const join = (size: string, sign: string) =>
    signs.length === 0 || size === "" ? size : `${size} ${sign || usualWord}`;
  const refused = sent !== undefined && sent === shown ? taking?.refused[0] : undefined;
  const send = (text: string, reason: string) => {
    if (text.trim() === "" || (decimal(text) === stored && reason === "")) return;
    setDraft(text);
    setSent(text);
    take(text, reason);
  };
  const label = words === "" ? row.dimension : words;
  const between = shown === "" || refused !== undefined ? undefined : placeBetween(shown, limits);
  const change = reading !== undefined && draft !== undefined && decimal(draft) !== stored;
  return (
    <li class={`place ${reading === undefined ? "" : "read"} ${refused === undefined ? "" : "refused"}`}>
      <label for={id}>
        {within === "" ? (
          label
        ) : (
          <>
            <span class="sr-only">{within}, </span>
            {label.slice(within.length + 2)}
          </>
        )}
      </label>
      <span class="entry">
        <input
          id={id}
          type="text"
          class="reading-box"
          inputMode={range[0]?.startsWith("-") === true && signs.length === 0 ? "text" : "decimal"}
          enterkeyhint="next"
          autocomplete="off"
          value={number}
          aria-invalid={refused !== undefined}
          aria-describedby={`${id}-told`}
          onInput={(event) => setDraft(join(event.currentTarget.value, word))}
          onKeyDown={(event) => {
            if (event.key !== "Enter") return;
            event.preventDefault();
            send(shown, "");
            goOn(event.currentTarget);
          }}
          onBlur={() => sent !== shown && send(shown, "")}
        />
        {signs.length > 0 && (
          <select
            aria-label={`${label}: which way`}
            value={word || usualWord}
            onChange={(event) => {
              const next = join(number, event.currentTarget.value);
              setDraft(next);
              if (number !== "") send(next, "");
            }}
          >
            {signs.map((sign) => (
              <option key={sign} value={sign}>
                {sign}
              </option>
            ))}
          </select>
        )}
        <span class="unit">{row.unit === "1" ? "" : row.unit}</span>
      </span>
      <p class="told" id={`${id}-told`} aria-live="polite">
        {refused !== undefined ? (
          <span class="trouble">Not taken: {refused}</span>
        ) : between !== undefined ? (
          <span class={between.tone}>{between.text}</span>
        ) : (
          <span class="quiet">
            {row.predicted === "" ? "nothing predicted" : `predicted ${row.predicted}`}
          </span>
        )}
        {refused === undefined && sent !== undefined && decimal(sent) === stored && gravest !== undefined && (
          <span class="rules">
            <span class="quiet">rules on it:</span> <VerdictMark word={gravest} />
          </span>
        )}
        {change && refused === undefined && sent !== shown && <span class="quiet"> · was {reading}</span>}
      </p>
      {refused !== undefined && (
        <form
          class="why"
          onSubmit={(event) => {
            event.preventDefault();
            send(shown, because);
          }}
        >
          <label>
            {reading === undefined ? "Why it is right all the same" : `Why it takes the place of ${reading}`}
            <input type="text" value={because} onInput={(event) => setBecause(event.currentTarget.value)} />
          </label>
          <button type="submit" disabled={because.trim() === ""}>
            Take it
          </button>
          <button
            type="button"
            onClick={() => {
              setDraft(undefined);
              setSent(undefined);
              setBecause("");
            }}
          >
            Leave it
          </button>
        </form>
      )}
    </li>
  );
}
