import type { Entry } from "./mergeReadings.ts";

/** What the file says under a path now, as plain data. */
export function entryAt(data: unknown, path: string): Entry {
  let at: unknown = data;
  for (const step of path.split("."))
    at = typeof at === "object" && at !== null ? (at as Record<string, unknown>)[step] : undefined;
  if (at === undefined) return {};
  return typeof at === "object" && at !== null ? (at as Entry) : { value: String(at) };
}
