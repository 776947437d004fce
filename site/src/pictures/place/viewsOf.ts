import { type CompiledRule, fields, parts, pathsOf, type Quantity, quantities, traceKinds } from "trialfit";
import { partViews } from "./partViews.ts";
import { systemViews } from "./systemViews.ts";
import type { View } from "./View.ts";

/** Traces by the quantity that names their extreme. */
const traceOf: ReadonlyMap<string, string> = new Map(
  [...traceKinds.values()].flatMap(({ id, extremes }) =>
    extremes.filter(({ of }) => quantities.has(of)).map(({ of }): [string, string] => [of, id]),
  ),
);

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

/** Whether a trace follows a gap, which is seen in the cylinder itself rather than as a curve. */
function isGap(trace: string): boolean {
  const { contact, extremes } = traceKinds.get(trace)!;
  return contact !== undefined || extremes[0].take === "least";
}

/** The curve that has a quantity for its extreme. */
function curvesOf(id: string): readonly View[] {
  const trace = traceOf.get(id);
  return trace === undefined || isGap(trace) ? [] : [{ kind: "curves", traces: [trace] }];
}

/** The cylinder where a gap is narrowest; nothing for a quantity that is no gap. */
export function viewsOfGap(id: string): readonly View[] {
  const trace = traceOf.get(id) ?? traceOf.get(id.replace(/Angle$/, ""));
  if (trace !== undefined) return isGap(trace) ? [{ kind: "mechanism", mark: trace }] : [];
  // By the catalog's habit the place of a clearance is named after it.
  const angle = `${id}Angle`;
  return quantities.get(angle)?.nominalOnly ? [{ kind: "mechanism", at: angle }] : [];
}

/** Views of parts in their order; those of what the engine does come after those of what can be touched. */
function byParts(ids: readonly string[]): readonly View[] {
  const views = ids.flatMap((part) => partViews[part] ?? []);
  return [...views.filter(({ kind }) => kind !== "torque"), ...views.filter(({ kind }) => kind === "torque")];
}

function bySystem(system: Quantity["system"], about: readonly string[]): readonly View[] {
  return systemViews[system]
    .filter((one) => one.about === undefined || about.includes(one.about))
    .map(({ view }) => view);
}

const anything: View = { kind: "mechanism", at: 60 };

/** Views of a quantity, the one that is most about it first. */
export function viewsOfQuantity({ id, system }: Quantity): readonly View[] {
  const about = partsUnder(id);
  return [...viewsOfGap(id), ...curvesOf(id), ...bySystem(system, about), ...byParts(about), anything];
}

/**
 * Views of a rule: a gap that it compares or names, then what its system shows, then its parts. The first that can be
 * drawn serves.
 */
export function viewsOfRule({ file, facts }: CompiledRule): readonly View[] {
  const gaps = facts.flatMap(viewsOfGap);
  return [...gaps, ...bySystem(file.system, file.parts), ...byParts(file.parts), anything];
}

/** Quantities whose numbers stand under the picture of a rule. */
export function quantitiesOf({ facts }: CompiledRule, most = 4): readonly string[] {
  return facts.filter((fact) => quantities.has(fact)).slice(0, most);
}
