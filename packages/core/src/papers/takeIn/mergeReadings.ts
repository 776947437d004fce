import type { Slot } from "../slotsOf.ts";

/** A reading with its circumstances, as it was written. */
export interface Reading {
  readonly slot: Slot;
  readonly text: string;
  /** Why it takes the place of another, or is right although it is unlikely; empty for an ordinary one. */
  readonly because: string;
  readonly instrument?: string;
  readonly uncertainty?: string;
  readonly temperature?: string;
  readonly joint?: string;
  readonly by?: string;
  readonly on?: string;
}

/** The longer form of a dimension in a build file, as plain data. */
export interface Entry {
  readonly [key: string]: unknown;
}

type Tree = { readonly [key: string]: unknown };

const isTree = (value: unknown): value is Tree =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const stepsOf = ({ position, height, direction }: Slot): readonly string[] =>
  [position, height, direction].filter((step) => step !== undefined);

/** What was measured at a slot before; undefined where nothing was. */
export function readingAt(entry: Entry, slot: Slot): string | undefined {
  const steps = stepsOf(slot);
  if (steps.length === 0) {
    const measured =
      entry.provenance === "measured" || entry.instrument !== undefined || entry.uncertainty !== undefined;
    return measured && entry.value !== undefined ? String(entry.value) : undefined;
  }
  let at: unknown = entry.readings;
  for (const step of steps) at = isTree(at) ? at[step] : undefined;
  return at === undefined || isTree(at) ? undefined : String(at);
}

/** A tree with a leaf set; a leaf in the way of a branch (a single reading where heights come) makes room. */
function withLeaf(tree: unknown, steps: readonly string[], leaf: string): Tree {
  const [first, ...rest] = steps;
  const own = isTree(tree) ? tree : {};
  return { ...own, [first!]: rest.length === 0 ? leaf : withLeaf(own[first!], rest, leaf) };
}

/** Words of several readings of one dimension, each once. */
function together(before: unknown, now: string | undefined): string | undefined {
  if (now === undefined) return before === undefined ? undefined : String(before);
  if (before === undefined) return now;
  const all = String(before).split("; ");
  return all.includes(now) ? String(before) : [...all, now].join("; ");
}

/** Of two uncertainties the one that covers both: the first that is written, unless the other is plainly wider. */
function wider(before: unknown, now: string | undefined): string | undefined {
  if (before === undefined || now === undefined)
    return now ?? (before === undefined ? undefined : String(before));
  return Number.parseFloat(now) > Number.parseFloat(String(before)) ? now : String(before);
}

const defined = (entry: Readonly<Record<string, unknown>>): Entry =>
  Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== undefined));

/** A single instrument decides the usual uncertainty by its name; of two, both are told in words. */
function planned(entry: Entry): string | undefined {
  const measured =
    entry.provenance === "measured" || entry.instrument !== undefined || entry.readings !== undefined;
  if (measured || entry.value === undefined) return undefined;
  const tolerance = entry.tolerance === undefined ? "" : ` ± ${entry.tolerance}`;
  return `planned ${entry.value}${tolerance}`;
}

/**
 * The entry of a dimension with one more reading in it.
 * @param there what was measured at this slot before: it is kept under `replaces` with the reason
 * @param places how many cylinders, crankpins or main bearings there are, where the build tells
 */
export function mergeReadings(
  entry: Entry,
  reading: Reading,
  there: string | undefined,
  places?: number,
): Entry {
  const { slot, text, because } = reading;
  const steps = stepsOf(slot);
  const where = steps.length === 0 ? "" : `${steps.join(", ")}: `;
  const old =
    there === undefined
      ? undefined
      : defined({ was: `${where}${there}`, because, by: reading.by, on: reading.on });
  const { tolerance: _, made: __, provenance: ___, value: ____, readings, ...rest } = entry;
  const all = withLeaf(readings, steps.length === 0 ? ["1"] : steps, text);
  const notes = [
    rest.note,
    planned(entry),
    there === undefined && because !== "" ? `${where}${because}` : undefined,
  ];
  const note = notes.filter((word) => word !== undefined).join("; ");
  return defined({
    ...rest,
    ...(steps.length === 0
      ? { value: text, provenance: "measured" }
      : { readings: all, ...valueBeside(entry, Object.keys(all).length, places) }),
    instrument: together(entry.instrument, reading.instrument),
    uncertainty: wider(entry.uncertainty, reading.uncertainty),
    temperature: reading.temperature ?? entry.temperature,
    joint: together(entry.joint, reading.joint),
    by: together(entry.by, reading.by),
    on: reading.on ?? entry.on,
    replaces: old === undefined ? entry.replaces : [...((entry.replaces as unknown[]) ?? []), old],
    note: note === "" ? undefined : note,
  });
}

/** The planned value stays beside the readings while a place was not measured: it is what that place has. */
function valueBeside(entry: Entry, measured: number, places: number | undefined): Entry {
  if (entry.value === undefined || measured === places) return {};
  const { value, tolerance, made } = entry;
  return defined({ value, tolerance, made });
}
