import type { Nominals } from "trialfit";
import { needed } from "./needed.ts";
import type { NoScene } from "./Scene.ts";
import { Sizes } from "./Sizes.ts";
import { said } from "./said.ts";

/** A piston pin in its bosses and the small end, cut along the pin [mm]. */
export interface PinSectionScene {
  readonly state: "value";
  readonly diameter: number;
  readonly hole: number;
  readonly length: number;
  readonly bossSpacing: number;
  readonly bossLength: number;
  readonly smallEnd: { readonly width: number; readonly outer: number | undefined } | undefined;
  readonly retainerSpan: number | undefined;
  readonly retainerThickness: number;
  readonly notes: readonly string[];
}

const told = [
  "pinEndFloat",
  "pinInBossClearance",
  "pinInSmallEndClearance",
  "smallEndSideRoom",
  "bossPressure",
];

/** The pin of a build. */
export function pinSectionOf(nominals: Nominals): PinSectionScene | NoScene {
  const found = needed(nominals, {
    diameter: "pistonPin.outerDiameter",
    length: "pistonPin.length",
    bossSpacing: "piston.bossSpacing",
    bossLength: "piston.bossLength",
  });
  if (found.state !== "value") return found;
  const sizes = new Sizes(nominals);
  const width = sizes.mm("connectingRod.smallEndWidth");
  return {
    state: "value",
    ...found.mm,
    hole: sizes.mm("pistonPin.innerDiameter") ?? 0,
    smallEnd:
      width === undefined ? undefined : { width, outer: sizes.mm("connectingRod.smallEndOuterDiameter") },
    retainerSpan: sizes.mm("piston.retainerSpan"),
    retainerThickness: sizes.mm("piston.retainerThickness") ?? 0,
    notes: told.flatMap((id) => said(nominals, id)),
  };
}
