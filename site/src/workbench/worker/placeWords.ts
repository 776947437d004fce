import { fieldLabel, quantities } from "trialfit";

/** What stands inside of an entry, by its key in the file, as people call it. */
const inner: Readonly<Record<string, string>> = {
  readings: "reading",
  value: "its size",
  by: "who looked",
  on: "the day",
  how: "with what",
  seen: "whether it was so",
  place: "which way",
};

/**
 * A place in a build file as people call it: the label of the field, then what it is in it.
 * @param entry path of the entry: `block.bore`
 * @param field the whole place: `block.bore.readings.1`
 */
export function placeWords(entry: string, field: string): string {
  const [part, name = ""] = entry.split(".");
  const aim = part === "aims" ? quantities.get(name) : undefined;
  const label = aim === undefined ? fieldLabel(entry) : `Aim: ${aim.name}`;
  const rest = field
    .slice(entry.length + 1)
    .split(".")
    .filter(Boolean);
  const within = rest.map((key) => inner[key] ?? key).join(" ");
  return within === "" ? label : `${label}, ${within}`;
}
