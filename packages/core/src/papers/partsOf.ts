import { parts } from "../read/buildSchema.ts";
import type { PartSpec } from "../read/FieldSpec.ts";
import { fields } from "../read/fieldCatalog.ts";
import type { PaperSource } from "./PaperSource.ts";

const keys = parts.map(({ spec }) => spec.key);

/** The key of the part that a field belongs to; empty for those at the top of the file. */
export const partKeyOf = (path: string): string =>
  path.includes(".") ? path.slice(0, path.indexOf(".")) : "";

/** Where the part of a field stands in the build file. */
export const partOrder = (path: string): number => keys.indexOf(partKeyOf(path));

/** Parts that are bought, in file order. */
export const boughtParts: readonly PartSpec[] = parts
  .map(({ spec }) => spec)
  .filter((spec) => spec.bought !== false);

/** The label of a field without its part. */
export const ownLabel = (path: string): string => fields.get(path)?.spec.label ?? path;

/** Paths of the fields of a part that the build gives, but for lists: those are too long for a line. */
export function givenFields({ build }: PaperSource, part: string): readonly string[] {
  return [...fields].flatMap(([path, { spec }]) =>
    partKeyOf(path) === part && build.values.has(path) && spec.kind !== "table" ? [path] : [],
  );
}

/** Paths by part, in the order of the build file. */
export function byPart(paths: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const groups = new Map<string, string[]>();
  for (const path of [...paths].sort((a, b) => partOrder(a) - partOrder(b))) {
    const key = partKeyOf(path);
    groups.set(key, [...(groups.get(key) ?? []), path]);
  }
  return groups;
}

/** The label of a part by its key. */
export const partLabel = (key: string): string =>
  parts.find(({ spec }) => spec.key === key)?.spec.label ?? "Build";
