import { quantities } from "trialfit";
import { extremeTraces } from "./extremeTraces.ts";
import { isGap } from "./isGap.ts";
import type { View } from "./View.ts";

/** The cylinder where a gap is narrowest; nothing for a quantity that is no gap. */
export function viewsOfGap(id: string): readonly View[] {
  const trace = extremeTraces.get(id) ?? extremeTraces.get(id.replace(/Angle$/, ""));
  if (trace !== undefined) return isGap(trace) ? [{ kind: "mechanism", mark: trace }] : [];
  // By the catalog's habit the place of a clearance is named after it.
  const angle = `${id}Angle`;
  return quantities.get(angle)?.nominalOnly ? [{ kind: "mechanism", at: angle }] : [];
}
