import { factType, fieldLabel, fields, parts, quantities } from "trialfit";

export { sentence, spaced } from "./words.ts";

const partsById = new Map(parts.map((part) => [part.spec.id, part.spec]));

/** The trade's name of a part by its id in rules. */
export function partLabel(id: string): string {
  return partsById.get(id)?.label ?? id;
}

/** What a fact of a rule is called: a quantity by its name, a field with its part. */
export function factLabel(name: string): string {
  if (quantities.has(name)) return quantities.get(name)!.name;
  if (name.startsWith("limit.")) return `limit “${limitWords(name)}”`;
  return name.endsWith(".place") ? (factType(name)?.label ?? name) : fieldLabel(name);
}

/** Page of a fact: its own for a quantity, its line of the build file's page for a field. */
export function factPath(name: string): `/${string}` | undefined {
  if (quantities.has(name)) return `/quantities/${name}/`;
  const path = name.replace(/\.place$/, "");
  return fields.has(path) ? `/build-file/#${fieldAnchor(path)}` : undefined;
}

/** Anchor of a field on the build file's page. */
export function fieldAnchor(path: string): string {
  return path.replace(".", "-");
}

/** The name of a limit, `smallEndPressure`, in words. */
export function limitWords(name: string): string {
  return name.replace(/^limit\./, "").replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
