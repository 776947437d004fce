import type { Nominals } from "trialfit";
import { type Groove, groovesOf } from "./groovesOf.ts";
import { needed } from "./needed.ts";
import type { NoScene } from "./Scene.ts";
import { Sizes } from "./Sizes.ts";
import { said } from "./said.ts";

/** Lands, grooves, rings and pin bore of a piston [mm], depths from the crown's flat. */
export interface RingPackScene {
  readonly state: "value";
  readonly radius: number;
  readonly landRadius: number;
  readonly boreRadius: number;
  readonly grooves: readonly Groove[];
  readonly pinDepth: number;
  readonly pinRadius: number;
  /** Metal between pin bore and oil groove; negative when the bore cuts the groove. */
  readonly overPin: number;
  readonly depth: number;
  readonly notes: readonly string[];
}

/** The ring pack of a build. */
export function ringPackOf(nominals: Nominals): RingPackScene | NoScene {
  const found = needed(nominals, {
    diameter: "piston.diameter",
    bore: "block.bore",
    pinDepth: "piston.compressionHeight",
    pin: "piston.pinBore",
    overPin: "pinBoreToOilGroove",
    depth: "ringPackDepth",
    topRoot: "piston.topGrooveRootDiameter",
    secondRoot: "piston.secondGrooveRootDiameter",
  });
  if (found.state !== "value") return found;
  const { diameter, bore, pinDepth, pin, overPin, depth } = found.mm;
  const sizes = new Sizes(nominals);
  return {
    state: "value",
    radius: diameter / 2,
    landRadius: (sizes.mm("piston.topLandDiameter") ?? diameter) / 2,
    boreRadius: bore / 2,
    grooves: groovesOf(sizes),
    pinDepth,
    pinRadius: pin / 2,
    overPin,
    depth,
    notes: [
      "pinBoreToOilGroove",
      "topRingSideClearance",
      "secondRingSideClearance",
      "topRingBackClearance",
    ].flatMap((id) => said(nominals, id)),
  };
}
