import type { Cylinder, CylinderPhase } from "@trialfit/mechanics";
import { cellNumber } from "../read/cellNumber.ts";
import type { TableRow } from "../read/FieldValue.ts";

/** What the volume over all pistons rests on. */
export const engineVolumeInputs = {
  r: "throwRadius",
  l: "connectingRod.length",
  e: "pinLineOffset",
  B: "block.bore",
  V_c: "clearanceVolume",
} as const;
export const engineVolumeTables = { throws: "crankshaft.throws" } as const;

/** Where each cylinder stands on the crankshaft and points. */
export function phasesOf(throws: readonly TableRow[]): readonly CylinderPhase[] {
  return throws.map((row) => ({ pinAngle: cellNumber(row, "pin"), bankAngle: cellNumber(row, "bank") }));
}

/** One cylinder as mechanics takes it, by the names that every quantity gives its sizes. */
export function cylinderOf(n: Readonly<Record<string, number>>): Cylinder {
  return {
    crank: { throwRadius: n.r!, rodLength: n.l!, pinLineOffset: n.e! },
    bore: n.B!,
    clearanceVolume: n.V_c!,
  };
}
