import type { Entry, FormField } from "../protocol.ts";
import { besideOf, emptyEntry, emptyReadings, emptyWanted } from "./entryOf.ts";

interface Props {
  readonly field: FormField;
  readonly entry: Entry;
  readonly write: (entry: Entry) => void;
}

/** In which ways a dimension can be given instead: as one size, by readings, or as one that is to be found. */
export function WaysOfGiving({ field, entry, write }: Props) {
  const { label, per } = field;
  const one = besideOf(entry);
  const way = (name: string, made: Entry) => (
    <button type="button" onClick={() => write(made)}>
      <span class="sr-only">{label}: </span>
      {name}
    </button>
  );
  return (
    <p class="row ways">
      {(entry.form === "readings" || entry.form === "wanted") && way("one size", one ?? emptyEntry(field))}
      {per !== undefined &&
        entry.form !== "readings" &&
        way(`readings for each ${per}`, emptyReadings(field, one))}
      {entry.form !== "wanted" && way("to be found", emptyWanted(field))}
    </p>
  );
}
