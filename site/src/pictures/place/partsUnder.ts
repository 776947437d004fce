import { fields, parts, pathsOf, quantities } from "trialfit";

const partIds: ReadonlyMap<string, string> = new Map(parts.map(({ spec }) => [spec.key, spec.id]));

/** Parts whose fields lie under a field or quantity, nearest first. */
export function partsUnder(path: string, seen = new Set<string>()): readonly string[] {
  if (seen.has(path)) return [];
  seen.add(path);
  const quantity = quantities.get(path);
  if (quantity !== undefined)
    return [...new Set(pathsOf(quantity).flatMap((below) => partsUnder(below, seen)))];
  const part = fields.has(path) ? partIds.get(path.split(".")[0]!) : undefined;
  return part === undefined ? [] : [part];
}
