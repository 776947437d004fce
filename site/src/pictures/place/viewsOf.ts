import { type CompiledRule, type Quantity, quantities } from "trialfit";
import { extremeTraces } from "./extremeTraces.ts";
import { isGap } from "./isGap.ts";
import { partsUnder } from "./partsUnder.ts";
import { partViews } from "./partViews.ts";
import { systemViews } from "./systemViews.ts";
import type { View } from "./View.ts";
import { viewsOfGap } from "./viewsOfGap.ts";

/** The curve that has a quantity for its extreme. */
function curvesOf(id: string): readonly View[] {
  const trace = extremeTraces.get(id);
  return trace === undefined || isGap(trace) ? [] : [{ kind: "curves", traces: [trace] }];
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
