import { type Field, fields, type Nominals, quantities } from "trialfit";
import type { NoScene } from "./Scene.ts";

/** A value with its tolerance [SI]. */
export interface Band {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

/** One of the lengths that are stacked up, or stacked up against. */
export interface StackPart extends Band {
  /** Path of the field, or id of the quantity. */
  readonly path: string;
  readonly label: string;
  /** 1 when more of it lowers the result, as everything below the crown does; -1 otherwise. */
  readonly lowers: 1 | -1;
}

/** From the crankshaft axis up to the deck: what is stacked, and what is left. */
export interface DeckStackScene {
  readonly state: "value";
  readonly stacked: readonly StackPart[];
  readonly deck: StackPart;
  readonly gasket: StackPart | undefined;
  readonly result: Band & {
    readonly id: string;
    readonly name: string;
    readonly unit: string;
    readonly decimals: number;
  };
}

/** The results that can be asked for. */
export type StackResult = "deckClearance" | "squishGap";

const stackedPaths = ["throwRadius", "connectingRod.length", "piston.compressionHeight"] as const;

function labelOf(path: string): string {
  const field: Field | undefined = fields.get(path);
  return field === undefined ? quantities.get(path)!.name : field.spec.label;
}

/** The stack of a build from the crankshaft up, with the band of what is left. Numbers are SI. */
export function deckStackOf(nominals: Nominals, id: StackResult = "deckClearance"): DeckStackScene | NoScene {
  const missing = [...new Set([id, ...stackedPaths].flatMap((path) => nominals.lacking(path)))];
  if (missing.length > 0) return { state: "missing", missing };
  const derived = nominals.derive(id);
  if (derived.state === "impossible") return { state: "impossible", reason: derived.reason };
  const part = (path: string, lowers: 1 | -1): StackPart[] => {
    const band = nominals.band(path);
    if (band === undefined) return [];
    const { low, nominal, high } = band;
    return [{ path, label: labelOf(path), lowers, low, nominal, high }];
  };
  const [deck] = part("block.deckHeight", -1);
  const stacked = stackedPaths.flatMap((path) => part(path, 1));
  if (derived.state !== "value" || deck === undefined || stacked.length < stackedPaths.length)
    return { state: "impossible", reason: "the stack has no length" };
  const { low, nominal, high } = derived;
  const { name, unit, decimals } = quantities.get(id)!;
  const [gasket] = id === "squishGap" ? part("headGasket.compressedThickness", -1) : [];
  return { state: "value", stacked, deck, gasket, result: { id, name, unit, decimals, low, nominal, high } };
}
