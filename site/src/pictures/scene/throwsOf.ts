import { cellNumber, type Nominals } from "trialfit";
import { needed } from "./needed.ts";
import type { NoScene } from "./Scene.ts";
import { said } from "./said.ts";

/** One cylinder on the crankshaft: angles [rad], position [mm]. */
export interface ThrowPlace {
  readonly number: number;
  readonly pin: number;
  readonly bank: number;
  readonly position: number;
  /** When it fires, from the first [rad]. */
  readonly fires: number;
}

/** The arrangement of the throws. */
export interface ThrowsScene {
  readonly state: "value";
  readonly throwRadius: number;
  readonly throws: readonly ThrowPlace[];
  readonly notes: readonly string[];
}

const told = ["primaryForce", "secondaryForce", "primaryCouple", "secondaryCouple", "firingUnevenness"];

/** The throws of a build. */
export function throwsOf(nominals: Nominals): ThrowsScene | NoScene {
  const rows = nominals.rows("crankshaft.throws");
  const found = needed(nominals, { throwRadius: "throwRadius" });
  if (rows === undefined) return { state: "missing", missing: ["crankshaft.throws"] };
  if (found.state !== "value") return found;
  return {
    state: "value",
    throwRadius: found.mm.throwRadius,
    throws: rows.map((row, index) => ({
      number: index + 1,
      pin: cellNumber(row, "pin"),
      bank: typeof row.bank === "number" ? row.bank : 0,
      position: cellNumber(row, "position") * 1e3,
      fires: cellNumber(row, "fires"),
    })),
    notes: told.flatMap((id) => said(nominals, id)),
  };
}
