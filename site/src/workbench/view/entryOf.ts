import type { Entry, FormField } from "../protocol.ts";

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
    case "seen":
      return entry.seen !== "";
    case "file":
      return entry.file.trim() !== "";
  }
}
