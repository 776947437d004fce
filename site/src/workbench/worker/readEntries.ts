import { confirmationPath, type FieldSpec, fields, provenances, splitDimension, syntaxOf } from "trialfit";
import { stringify } from "yaml";
import type { About, Entry } from "../protocol.ts";

type Raw = unknown;
const isText = (raw: Raw): raw is string => typeof raw === "string";
const isObject = (raw: Raw): raw is Record<string, unknown> =>
  typeof raw === "object" && raw !== null && !Array.isArray(raw);

/** What a form can show of the longer way of writing a dimension. */
const KNOWN = new Set(["value", "provenance", "instrument", "note"]);

function dimensionEntry(text: string, spec: FieldSpec, about: About): Entry {
  const pieces = spec.kind === "dimension" ? splitDimension(text, syntaxOf(spec)) : undefined;
  return pieces === undefined ? { form: "text", text, about } : { form: "pieces", ...pieces, about };
}

function readEntry(raw: Raw, spec: FieldSpec): Entry {
  const file: Entry = { form: "file", file: stringify(raw, { schema: "failsafe" }).trimEnd() };
  if (isText(raw)) return dimensionEntry(raw, spec, {});
  if (spec.kind === "table") {
    const columns = new Set(Object.keys(spec.columns));
    const plain = (row: Raw): row is Record<string, string> =>
      isObject(row) && Object.entries(row).every(([name, cell]) => columns.has(name) && isText(cell));
    return Array.isArray(raw) && raw.every(plain) ? { form: "rows", rows: raw } : file;
  }
  if (!isObject(raw) || !isText(raw.value)) return file;
  const { value, provenance, instrument, note } = raw;
  const known =
    Object.keys(raw).every((key) => KNOWN.has(key)) &&
    [provenance, instrument, note].every((one) => one === undefined || isText(one)) &&
    (provenance === undefined || (provenances as readonly unknown[]).includes(provenance));
  return known ? dimensionEntry(value, spec, { provenance, instrument, note } as About) : file;
}

/** Every entry of a build file as a form shows it, by path. What is no field is left out; reading names it. */
export function readEntries(data: unknown): Readonly<Record<string, Entry>> {
  const entries: Record<string, Entry> = {};
  if (!isObject(data)) return entries;
  for (const [path, { spec }] of fields) {
    const [part, name] = path.split(".") as [string, string | undefined];
    const above = data[part];
    const raw = name === undefined ? above : isObject(above) ? above[name] : undefined;
    if (raw !== undefined) entries[path] = readEntry(raw, spec);
  }
  if (isObject(data.confirmations))
    for (const [rule, raw] of Object.entries(data.confirmations)) {
      const said = isObject(raw) ? raw : {};
      const word = (key: string) => (isText(said[key]) ? said[key] : "");
      entries[confirmationPath(rule)] = {
        form: "seen",
        seen: word("seen"),
        by: word("by"),
        on: word("on"),
        how: word("how"),
      };
    }
  return entries;
}
