import { confirmationPath, type FieldSpec, fields, provenances, splitDimension, syntaxOf } from "trialfit";
import { stringify } from "yaml";
import type { About, Entry, Pieces, Text } from "../protocol.ts";
import { readingRows } from "./readingRows.ts";

type Raw = unknown;
const isText = (raw: Raw): raw is string => typeof raw === "string";
const isObject = (raw: Raw): raw is Record<string, unknown> =>
  typeof raw === "object" && raw !== null && !Array.isArray(raw);

/** What a form can show of the longer way of writing a dimension. */
const ABOUT = [
  "provenance",
  "instrument",
  "uncertainty",
  "made",
  "note",
] as const satisfies readonly (keyof About)[];
const KNOWN: ReadonlySet<string> = new Set(["value", "readings", ...ABOUT]);

const WANTED = /^\?(?:\s*(.+?)\s+to\s+(.+?))?(?:\s*,?\s*in steps of\s+(.+?))?\s*$/;

function wantedEntry(text: string, spec: FieldSpec): Entry | undefined {
  const found = spec.kind === "dimension" ? WANTED.exec(text.trim()) : null;
  if (found === null || spec.kind !== "dimension") return undefined;
  const [, from = "", to = "", step = ""] = found;
  return { form: "wanted", unit: spec.unit, from, to, step };
}

function dimensionEntry(text: string, spec: FieldSpec, about: About): Pieces | Text {
  const pieces = spec.kind === "dimension" ? splitDimension(text, syntaxOf(spec)) : undefined;
  return pieces === undefined ? { form: "text", text, about } : { form: "pieces", ...pieces, about };
}

function readEntry(raw: Raw, spec: FieldSpec): Entry {
  const file: Entry = { form: "file", file: stringify(raw, { schema: "failsafe" }).trimEnd() };
  if (isText(raw)) return wantedEntry(raw, spec) ?? dimensionEntry(raw, spec, {});
  if (spec.kind === "table") {
    const columns = new Set(Object.keys(spec.columns));
    const plain = (row: Raw): row is Record<string, string> =>
      isObject(row) && Object.entries(row).every(([name, cell]) => columns.has(name) && isText(cell));
    return Array.isArray(raw) && raw.every(plain) ? { form: "rows", rows: raw } : file;
  }
  if (!isObject(raw)) return file;
  const { value, readings } = raw;
  const { provenance } = raw;
  const said = Object.fromEntries(
    ABOUT.filter((key) => raw[key] !== undefined).map((key) => [key, raw[key]]),
  );
  const known =
    Object.keys(raw).every((key) => KNOWN.has(key)) &&
    [value, ...Object.values(said)].every((one) => one === undefined || isText(one)) &&
    (provenance === undefined || (provenances as readonly unknown[]).includes(provenance));
  if (!known) return file;
  const about = said as About;
  const size = isText(value) ? dimensionEntry(value, spec, {}) : undefined;
  if (readings === undefined) return size === undefined ? file : { ...size, about };
  const rows = readingRows(readings);
  if (rows === undefined || spec.kind !== "dimension") return file;
  const unit = splitDimension(rows[0]?.reading ?? "", syntaxOf(spec))?.unit ?? spec.unit;
  return { form: "readings", unit, rows, beside: size, about };
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
  if (isObject(data.aims))
    for (const [id, text] of Object.entries(data.aims))
      if (isText(text)) entries[`aims.${id}`] = { form: "text", text, about: {} };
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
