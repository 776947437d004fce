import { prettyUnit } from "../../data/prettyUnit.ts";
import type { FormField, Wanted } from "../protocol.ts";

interface Props {
  readonly field: FormField;
  readonly entry: Wanted;
  readonly id: string;
  readonly describedBy: string | undefined;
  readonly wrong: boolean;
  readonly write: (entry: Wanted) => void;
}

/** A size that is to be found: between which bounds, and in which steps it can be had. */
export function WantedEditor({ field, entry, id, describedBy, wrong, write }: Props) {
  const [least = "", most = ""] = field.range ?? [];
  const box = (key: "from" | "to" | "step", word: string, name: string, placeholder: string) => (
    <label>
      {word}
      <input
        type="text"
        {...(key === "from" ? { id } : {})}
        autocomplete="off"
        aria-label={`${field.label}: ${name}`}
        aria-invalid={wrong}
        aria-describedby={describedBy}
        placeholder={placeholder}
        value={entry[key]}
        onInput={(event) => write({ ...entry, [key]: event.currentTarget.value })}
      />
    </label>
  );
  return (
    <div class="pieces wanted">
      <span class="quiet">to be found</span>
      {box("from", "from", "least that it may be", least)}
      {box("to", "to", "most that it may be", most)}
      {box("step", "in steps of", "steps in which it can be had", "usual")}
      {entry.unit !== "1" && <span class="quiet">A number alone is in {prettyUnit(entry.unit)}.</span>}
    </div>
  );
}
