import { type Nominals, quantities } from "trialfit";
import { needed } from "./needed.ts";
import { printed } from "./printed.ts";
import type { NoScene } from "./Scene.ts";
import { Sizes } from "./Sizes.ts";
import { said } from "./said.ts";

/** Bearings that can be drawn. */
export const drawnBearings = {
  main: {
    word: "Main bearing",
    part: "mainBearing",
    journal: "crankshaft.mainJournalDiameter",
    housing: "block.mainHousingBore",
  },
  rod: {
    word: "Rod bearing",
    part: "rodBearing",
    journal: "crankshaft.crankpinDiameter",
    housing: "connectingRod.bigEndBore",
  },
} as const;
export type DrawnBearing = keyof typeof drawnBearings;

/** A journal in its bearing [mm]. */
export interface BearingScene {
  readonly state: "value";
  readonly word: string;
  readonly journal: number;
  readonly housing: number;
  /** Play across the diameter. */
  readonly clearance: number;
  readonly clearanceText: string;
  readonly length: number | undefined;
  /** How far the journal is off the middle, of half the play: 0 in the middle, 1 on the shell. */
  readonly eccentricity: number | undefined;
  readonly notes: readonly string[];
}

const told = ["ClearanceHot", "ClearanceRatio", "LeastFilm", "UnitLoad", "CrushStress"];

/** A bearing of a build. */
export function bearingOf(nominals: Nominals, which: DrawnBearing): BearingScene | NoScene {
  const { word, part, journal, housing } = drawnBearings[which];
  const found = needed(nominals, { journal, housing, clearance: `${part}Clearance` });
  if (found.state !== "value") return found;
  const sizes = new Sizes(nominals);
  return {
    state: "value",
    word,
    ...found.mm,
    clearanceText: printed(nominals, `${part}Clearance`)!,
    length: sizes.mm(`${part}.length`),
    eccentricity: sizes.si(`${part}Eccentricity`),
    notes: told.flatMap((id) => (quantities.has(`${part}${id}`) ? said(nominals, `${part}${id}`) : [])),
  };
}
