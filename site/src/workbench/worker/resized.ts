import type { Entry } from "../protocol.ts";

/** An entry with another size: how it is made and its note stay, but nothing says of the new size that it was measured. */
export function resized(entry: Entry | undefined, text: string): Entry {
  const { made, note } = entry !== undefined && "about" in entry ? entry.about : {};
  return { form: "text", text, about: { made, note } };
}
