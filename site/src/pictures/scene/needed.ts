import type { Nominals } from "trialfit";
import type { NoScene } from "./Scene.ts";
import { toMm } from "./toMm.ts";

/** Sizes that a picture cannot do without, by the names it gives them [mm]. */
export type Needed<K extends string> =
  | { readonly state: "value"; readonly mm: Readonly<Record<K, number>> }
  | NoScene;

/** Asks a build for lengths. What is missing, or cannot be, is said instead. */
export function needed<const K extends string>(
  nominals: Nominals,
  paths: Readonly<Record<K, string>>,
): Needed<K> {
  const entries = Object.entries<string>(paths);
  const missing = [...new Set(entries.flatMap(([, path]) => nominals.lacking(path)))];
  if (missing.length > 0) return { state: "missing", missing };
  const mm: Record<string, number> = {};
  for (const [name, path] of entries) {
    const value = nominals.size(path);
    if (value === undefined) return { state: "impossible", reason: `${path} has no value` };
    mm[name] = toMm(value);
  }
  return { state: "value", mm: mm as Record<K, number> };
}
