interface Props {
  readonly label: string;
  readonly value: string;
  readonly options: readonly { readonly id: string; readonly label: string }[];
  readonly choose: (id: string) => void;
}

/** A choice with its label above it. */
export function LabelledSelect({ label, value, options, choose }: Props) {
  return (
    <label>
      {label}
      <select value={value} onChange={(event) => choose(event.currentTarget.value)}>
        {options.map((option) => (
          <option key={option.id} value={option.id}>
            {option.label}
          </option>
        ))}
      </select>
    </label>
  );
}
