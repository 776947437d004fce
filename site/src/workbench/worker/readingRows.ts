import type { Reading } from "../protocol.ts";

/** What stands for a height or a direction that was not named, where others are. */
const UNNAMED = "not named";

type Raw = unknown;
const isText = (raw: Raw): raw is string => typeof raw === "string";
const isGroup = (raw: Raw): raw is Record<string, unknown> =>
  typeof raw === "object" && raw !== null && !Array.isArray(raw);

/** Readings at one place, which may have been repeated. */
function listOf(raw: Raw): readonly string[] | undefined {
  if (isText(raw)) return [raw];
  return Array.isArray(raw) && raw.length > 1 && raw.every(isText) ? raw : undefined;
}

function rowsAt(
  raw: Raw,
  head: Omit<Reading, "reading">,
  below: readonly (keyof Reading)[],
): readonly Reading[] | undefined {
  const list = listOf(raw);
  if (list !== undefined) return list.map((reading) => ({ ...head, reading }));
  const [level, ...rest] = below;
  if (level === undefined || !isGroup(raw)) return undefined;
  const rows = Object.entries(raw).map(([name, inner]) => rowsAt(inner, { ...head, [level]: name }, rest));
  return rows.every((one) => one !== undefined) ? rows.flat() : undefined;
}

/** Readings of a build file, a row each; undefined where they are written in a way that rows cannot say. */
export function readingRows(raw: Raw): readonly Reading[] | undefined {
  return rowsAt(raw, { at: "", height: "", direction: "" }, ["at", "height", "direction"]);
}

function grouped(
  rows: readonly Reading[],
  by: "at" | "height" | "direction",
): ReadonlyMap<string, readonly Reading[]> {
  const groups = new Map<string, Reading[]>();
  for (const row of rows) {
    const name = row[by].trim() === "" ? UNNAMED : row[by].trim();
    groups.set(name, [...(groups.get(name) ?? []), row]);
  }
  return groups;
}

function nested(rows: readonly Reading[], [level, ...rest]: readonly ("height" | "direction")[]): unknown {
  if (level === undefined) return rows.length === 1 ? rows[0]!.reading : rows.map(({ reading }) => reading);
  if ([level, ...rest].every((one) => rows.every((row) => row[one].trim() === ""))) return nested(rows, []);
  return Object.fromEntries([...grouped(rows, level)].map(([name, within]) => [name, nested(within, rest)]));
}

/** Rows as a build file says them: by number, and by height and direction where they are given. */
export function readingsOf(rows: readonly Reading[]): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    [...grouped(rows, "at")].map(([at, within]) => [at, nested(within, ["height", "direction"])]),
  );
}
