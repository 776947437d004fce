interface Props {
  /** What is sought, as the button says it: to begin, to end and to begin anew. */
  readonly words: { readonly begin: string; readonly end: string; readonly anew: string };
  /** What it is for, where words alone do not tell. */
  readonly about?: string;
  readonly id?: string;
  /** What is being done; undefined while nothing is. */
  readonly doing: string | undefined;
  readonly share?: { readonly done: number; readonly of: number } | undefined;
  /** What came of it, for those who listen. */
  readonly said: string;
  readonly answered: boolean;
  readonly disabled?: boolean;
  readonly begin: () => void;
  readonly end: () => void;
}

/** The button that begins and ends a search, how far it is, and in a word what came of it. One button, so that it keeps the focus. */
export function Seeking(props: Props) {
  const { words, about, id, doing, share, said, answered, disabled = false, begin, end } = props;
  const word = doing !== undefined ? words.end : answered ? words.anew : words.begin;
  return (
    <div class="seeking">
      <button
        type="button"
        id={id}
        aria-label={about === undefined ? undefined : `${word}: ${about}`}
        class={doing === undefined && !answered ? "main" : ""}
        disabled={disabled}
        onClick={doing === undefined ? begin : end}
      >
        {word}
      </button>
      <p role="status">{doing ?? said}</p>
      {doing !== undefined && (
        <progress
          aria-label={`How far: ${word}`}
          {...(share === undefined ? {} : { value: share.done, max: Math.max(1, share.of) })}
        />
      )}
    </div>
  );
}
