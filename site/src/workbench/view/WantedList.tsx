interface Props {
  readonly wanted: readonly { readonly path: string; readonly rules: number }[];
  readonly nameOf: (path: string) => string | undefined;
  readonly goTo: (path: string) => void;
}

const MOST = 6;

/** The entries that would let most rules be judged: what to ask for first. */
export function WantedList({ wanted, nameOf, goTo }: Props) {
  const fields = wanted.flatMap(({ path, rules }) => {
    const label = nameOf(path);
    return label === undefined ? [] : [{ path, label, rules }];
  });
  if (fields.length === 0) return null;
  return (
    <p class="needs">
      <b class="label">ask for these first</b>
      {fields.slice(0, MOST).map(({ path, label, rules }) => (
        <button key={path} type="button" class="link" onClick={() => goTo(path)}>
          {label} ({rules === 1 ? "1 rule" : `${rules} rules`})
        </button>
      ))}
    </p>
  );
}
