import type { Build } from "./Build.ts";
import { BUILD_FORMAT } from "./buildSchema.ts";
import { fields } from "./fieldCatalog.ts";
import { readBuild } from "./readData.ts";
import { requirePositions } from "./requirePositions.ts";

/** A build file that says nothing but what stands under one path. */
function fileWith(name: string, path: string, entry: unknown): object {
  const dot = path.indexOf(".");
  const head = { trialfit: BUILD_FORMAT, name };
  if (dot < 0) return { ...head, [path]: entry };
  return { ...head, [path.slice(0, dot)]: entry === undefined ? {} : { [path.slice(dot + 1)]: entry } };
}

/** What is not under a path, with what was read for it, in the order in which a whole file is read. */
function replaced<T>(
  all: ReadonlyMap<string, T>,
  path: string,
  read: ReadonlyMap<string, T>,
): Map<string, T> {
  const under = (one: string) => one === path || one.startsWith(`${path}.`);
  const merged = new Map([...all].filter(([one]) => !under(one) || read.has(one)));
  for (const [one, value] of read) merged.set(one, value);
  return merged;
}

function inFileOrder<T>(values: ReadonlyMap<string, T>): ReadonlyMap<string, T> {
  const ordered = new Map<string, T>();
  for (const field of fields.keys()) {
    for (const path of [field, `${field}.place`]) {
      const value = values.get(path);
      if (value !== undefined) ordered.set(path, value);
    }
  }
  for (const [path, value] of values) if (!ordered.has(path)) ordered.set(path, value);
  return ordered;
}

/** The aims with those under a path replaced. */
function aimsWith(all: Build["aims"], path: string, read: Build["aims"]): Build["aims"] {
  if (path === "aims") return read;
  return path.startsWith("aims.") ? replaced(all, path.slice("aims.".length), read) : all;
}

/**
 * A build with one field changed: only this field is read, and what spans fields is checked again. The result is
 * that of reading the whole file with this entry in it, and so are the problems.
 * @param build a build that was read
 * @param path the field, `block.bore`; also a whole part, the name, or `confirmations.<rule>`
 * @param entry what stands there in a build file, as text or plain data; undefined to leave it out
 * @throws InputError when the entry cannot be read, or does not go with the other fields
 */
export function withField(build: Build, path: string, entry: unknown): Build {
  const file = build.file ?? "build";
  const read = readBuild(fileWith(build.name, path, entry), file);
  const values = inFileOrder(replaced(build.values, path, read.values));
  requirePositions(values, file, () => undefined);
  const rule = path.replace(/^confirmations\.?/, "");
  const confirmations =
    path.startsWith("confirmations.") || path === "confirmations"
      ? rule === ""
        ? read.confirmations
        : replaced(build.confirmations, rule, read.confirmations)
      : build.confirmations;
  const wanted = inFileOrder(replaced(build.wanted, path, read.wanted));
  const aims = aimsWith(build.aims, path, read.aims);
  return { name: read.name, values, confirmations, wanted, aims, file: build.file };
}
