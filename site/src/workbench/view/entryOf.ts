import type { Entry, FormField, Pieces, Readings, Text, Wanted } from "../protocol.ts";

/** An entry to begin with, where the build has none: empty, in the usual unit. */
export function emptyEntry(field: FormField): Entry {
  switch (field.kind) {
    case "dimension":
      return {
        form: "pieces",
        number: "",
        unit: field.units?.[0] ?? "1",
        tolerance: "",
        word: field.words?.[0] ?? "",
        about: {},
      };
    case "table":
      return { form: "rows", rows: [] };
    default:
      return { form: "text", text: "", about: {} };
  }
}

/** The size of an entry without what is said about it; undefined where it has none. */
export function besideOf(entry: Entry): Pieces | Text | undefined {
  if (entry.form === "readings") return entry.beside;
  return entry.form === "pieces" || entry.form === "text" ? { ...entry, about: {} } : undefined;
}

/** Readings to begin with: one row, and beside them the size that stood there before. */
export function emptyReadings(field: FormField, beside: Pieces | Text | undefined): Readings {
  const size = emptyEntry(field);
  return {
    form: "readings",
    unit: beside?.form === "pieces" ? beside.unit : (field.units?.[0] ?? "1"),
    rows: [{ at: "1", height: "", direction: "", reading: "" }],
    beside: beside ?? (size.form === "pieces" ? size : undefined),
    about: {},
  };
}

/** A size to be found, within all that the field can be. */
export function emptyWanted(field: FormField): Wanted {
  return { form: "wanted", unit: field.units?.[0] ?? "1", from: "", to: "", step: "" };
}

/** Whether an entry says anything. */
export function isFilled(entry: Entry | undefined): boolean {
  switch (entry?.form) {
    case undefined:
      return false;
    case "pieces":
      return entry.number.trim() !== "";
    case "text":
      return entry.text.trim() !== "";
    case "rows":
      return entry.rows.length > 0;
    case "readings":
      return entry.rows.some(({ reading }) => reading.trim() !== "") || isFilled(entry.beside);
    case "wanted":
      return true;
    case "seen":
      return entry.seen !== "";
    case "file":
      return entry.file.trim() !== "";
  }
}
