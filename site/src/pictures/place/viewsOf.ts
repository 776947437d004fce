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

/** Traces that are seen in the cylinder itself rather than as a curve: those of a gap. */
function traceView(trace: string): View {
  const { contact, extremes } = traceKinds.get(trace)!;
  const gap = contact !== undefined || extremes[0].take === "least";
  return gap ? { kind: "mechanism", mark: trace } : { kind: "curves", traces: [trace] };
}

/** The view of a quantity that a trace or a quantity for its angle belongs to. */
function ownView(id: string): readonly View[] {
  const trace = traceOf.get(id) ?? traceOf.get(id.replace(/Angle$/, ""));
  if (trace !== undefined) return [traceView(trace)];
  // By the catalog's habit the place of a clearance is named after it.
  const angle = `${id}Angle`;
  return quantities.get(angle)?.nominalOnly ? [{ kind: "mechanism", at: angle, mark: "none" }] : [];
}

/** The view of a gap where it is narrowest, in the cylinder itself; none for any other quantity. */
export function viewsOfGap(id: string): readonly View[] {
  return ownView(id).filter(({ kind }) => kind === "mechanism");
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
  return [...ownView(id), ...bySystem(system, about), ...byParts(about), anything];
}

/** Views of a rule, by what it compares, then by its system, then by its parts; the first that can be drawn serves. */
export function viewsOfRule({ file, facts }: CompiledRule): readonly View[] {
  const own = facts.flatMap(ownView);
  return [...own, ...bySystem(file.system, file.parts), ...byParts(file.parts), anything];
}
