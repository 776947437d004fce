import { type BuildEdit, joinDimension, parseSource } from "trialfit";
import type { About, Entry } from "../protocol.ts";

const isGiven = (text: string | undefined) => text !== undefined && text.trim() !== "";

/** The short way of writing a dimension, or the longer one where there is more to say than its size. */
function withAbout(value: string, about: About): unknown {
  const more = Object.entries(about).filter(([, text]) => isGiven(text));
  return more.length === 0 ? value : { value, ...Object.fromEntries(more) };
}

/** What an entry of the form comes to in the build file; an empty one takes the entry out. */
export function writeEntry(path: string, entry: Entry | undefined): BuildEdit {
  switch (entry?.form) {
    case undefined:
      return { path, value: undefined };
    case "pieces":
      return {
        path,
        value: isGiven(entry.number) ? withAbout(joinDimension(entry), entry.about) : undefined,
      };
    case "text":
      return { path, value: isGiven(entry.text) ? withAbout(entry.text.trim(), entry.about) : undefined };
    case "seen": {
      const { form: _, ...said } = entry;
      return { path, value: Object.values(said).some(isGiven) ? said : undefined };
    }
    case "rows": {
      const rows = entry.rows
        .map((row) => Object.fromEntries(Object.entries(row).filter(([, cell]) => isGiven(cell))))
        .filter((row) => Object.keys(row).length > 0);
      return { path, value: rows.length === 0 ? undefined : rows };
    }
    case "file":
      return { path, value: isGiven(entry.file) ? parseSource(entry.file, path).data : undefined };
  }
}
