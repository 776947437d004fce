import type { System } from "@trialfit/rules";
import type { View } from "./View.ts";

/** A view that only serves what is about one part. */
export interface SystemView {
  readonly view: View;
  readonly about?: string;
}

const joint = (about: string, part: (View & { kind: "joint" })["part"]): SystemView => ({
  about,
  view: { kind: "joint", part },
});

/**
 * Where what belongs to a system is best seen; the first view that serves is taken. An empty list leaves it to the
 * parts.
 */
export const systemViews: Readonly<Record<System, readonly SystemView[]>> = {
  targets: [
    { about: "piston", view: { kind: "curves", traces: ["pistonSpeed"] } },
    { view: { kind: "torque" } },
  ],
  kinematics: [{ view: { kind: "curves", traces: ["pistonTravel", "pistonSpeed", "pistonAcceleration"] } }],
  compression: [
    { about: "head-gasket", view: { kind: "deck-stack", result: "squishGap" } },
    { view: { kind: "deck-stack", result: "deckClearance" } },
  ],
  clearances: [{ view: { kind: "mechanism" } }],
  pistons: [
    { about: "ring-set", view: { kind: "ring-pack" } },
    { about: "piston-pin", view: { kind: "pin" } },
    { view: { kind: "mechanism", at: 20 } },
  ],
  rings: [{ view: { kind: "ring-pack" } }],
  pins: [{ view: { kind: "pin" } }],
  rods: [joint("rod-bolt", "rodBolt"), { view: { kind: "mechanism", at: 75 } }],
  bearings: [
    { about: "rod-bearing", view: { kind: "bearing", which: "rod" } },
    { about: "main-bearing", view: { kind: "bearing", which: "main" } },
    { view: { kind: "throw-side" } },
  ],
  lubrication: [],
  crankshaft: [{ view: { kind: "throw-side" } }],
  balance: [{ view: { kind: "throws" } }],
  torsion: [{ view: { kind: "throws" } }],
  flywheel: [
    joint("flywheel-fastener", "flywheelFastener"),
    { about: "flywheel", view: { kind: "flywheel" } },
  ],
  "main-caps": [{ view: { kind: "joint", part: "mainFastener" } }],
  fasteners: [
    joint("rod-bolt", "rodBolt"),
    joint("main-fastener", "mainFastener"),
    joint("head-fastener", "headFastener"),
    joint("flywheel-fastener", "flywheelFastener"),
  ],
  head: [],
  "valve-train": [],
  charge: [],
  assembly: [],
  "first-run": [],
};
