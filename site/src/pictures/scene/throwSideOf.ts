import type { Nominals } from "trialfit";
import { needed } from "./needed.ts";
import type { NoScene } from "./Scene.ts";
import { Sizes } from "./Sizes.ts";
import { said } from "./said.ts";

/** One throw of the crankshaft from the side [mm]. */
export interface ThrowSideScene {
  readonly state: "value";
  readonly throwRadius: number;
  readonly main: number;
  readonly pin: number;
  readonly pinLength: number;
  readonly mainLength: number;
  readonly web: number;
  readonly counterweight: number | undefined;
  readonly fillet: number;
  /** How far the two journals overlap, seen along the shaft; negative when they do not. */
  readonly overlap: number;
  readonly notes: readonly string[];
}

const told = [
  "journalOverlap",
  "filletRatio",
  "crankEndPlay",
  "greatestCrankpinLoad",
  "mainBearingFiringLoad",
];

/** A throw of a build. */
export function throwSideOf(nominals: Nominals): ThrowSideScene | NoScene {
  const found = needed(nominals, {
    throwRadius: "throwRadius",
    main: "crankshaft.mainJournalDiameter",
    pin: "crankshaft.crankpinDiameter",
    pinLength: "crankshaft.crankpinLength",
    mainLength: "crankshaft.mainJournalLength",
    web: "crankshaft.webThickness",
    overlap: "journalOverlap",
  });
  if (found.state !== "value") return found;
  const sizes = new Sizes(nominals);
  return {
    state: "value",
    ...found.mm,
    counterweight: sizes.mm("crankshaft.counterweightRadius"),
    fillet: sizes.mm("crankshaft.filletRadius") ?? 0,
    notes: told.flatMap((id) => said(nominals, id)),
  };
}
