import type { DimensionPieces } from "trialfit";
import { inUnit } from "./inUnit.ts";

type Sized = Pick<DimensionPieces, "number" | "unit" | "tolerance">;

const isSame = (a: Sized, b: Sized): boolean =>
  a.number === b.number && a.unit === b.unit && a.tolerance === b.tolerance;

/** Sizes that are looked at in other units: however often the unit changes, each is computed from what was typed. */
export class Rescaling {
  /** By path, what was typed and what was made of it last. */
  private readonly made = new Map<string, { readonly typed: DimensionPieces; readonly now: Sized }>();

  inUnit(path: string, pieces: DimensionPieces, unit: string): DimensionPieces {
    const before = this.made.get(path);
    const typed = before !== undefined && isSame(before.now, pieces) ? before.typed : pieces;
    const { number, tolerance } = unit === typed.unit ? typed : inUnit(typed, unit);
    const now = { ...pieces, number, tolerance, unit };
    this.made.set(path, { typed, now });
    return now;
  }
}
