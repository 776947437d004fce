/** How a dimension gets its size in the machine shop. */
export interface Operation {
  /** What is done, as the shop calls it. */
  readonly name: string;
  /** What the size is measured from. */
  readonly datum: string;
  /** What is bolted on while it is cut and measured. */
  readonly joint: string;
  /** Fields of the build that say how the surface or form must come out. */
  readonly finish: readonly string[];
  /** The next part it is cut to, where it is cut to one. */
  readonly to?: string;
}

/**
 * Operations by the dimension that they give, in the order of the work. Common practice: tests and notches first,
 * the crankshaft's line before the decks that are measured from it, the bores last and with the plate on.
 */
export const operations: Readonly<Record<string, Operation>> = {
  "block.notchDepth": {
    name: "Notch the cylinder bottoms",
    datum: "cylinder axis",
    joint: "bare block",
    finish: ["block.notchHeight", "block.notchWidth", "block.notchFloor"],
  },
  "mainCap.registerInterference": {
    name: "Fit the main caps to their registers",
    datum: "side faces of the register",
    joint: "bare block, caps by hand",
    finish: [],
  },
  "block.mainHousingBore": {
    name: "Line-hone the main housings",
    datum: "crankshaft axis",
    joint: "caps at their final torque with the fasteners and the lubricant of the build",
    finish: ["block.mainBoreMisalignment"],
    to: "mainBearing",
  },
  "block.deckHeight": {
    name: "Cut the decks",
    datum: "crankshaft axis, after line-honing",
    joint: "main caps at their final torque",
    finish: ["block.deckRoughness", "block.deckFlatness", "block.deckHeightSpread"],
    to: "piston",
  },
  "liner.protrusion": {
    name: "Set the liners",
    datum: "deck",
    joint: "liners held down as by the head",
    finish: [],
  },
  "block.bore": {
    name: "Bore and hone the cylinders",
    datum: "crankshaft axis and deck",
    joint: "torque plate with the gasket and the fasteners of the build, main caps torqued, part at 20 degC",
    finish: [
      "block.borePeakHeight",
      "block.honeAngle",
      "block.boreTaper",
      "block.boreOutOfRound",
      "block.leadInChamfer",
    ],
    to: "piston",
  },
  "crankshaft.mainJournalDiameter": {
    name: "Grind the main journals",
    datum: "axis of the end journals",
    joint: "crankshaft alone",
    finish: ["crankshaft.journalRa", "crankshaft.filletRadius", "crankshaft.runout"],
    to: "mainBearing",
  },
  "crankshaft.crankpinDiameter": {
    name: "Grind the crankpins",
    datum: "axis of the main journals",
    joint: "crankshaft alone",
    finish: ["crankshaft.journalRa", "crankshaft.filletRadius", "crankshaft.indexError"],
    to: "rodBearing",
  },
  "connectingRod.bigEndBore": {
    name: "Hone the big ends",
    datum: "axis of the small end",
    joint: "cap at the final preload of the rod bolts",
    finish: ["connectingRod.bigEndOutOfRound"],
    to: "rodBearing",
  },
  "connectingRod.smallEndBore": {
    name: "Hone the small ends",
    datum: "axis of the big end",
    joint: "rod alone, bush pressed in",
    finish: [],
    to: "pistonPin",
  },
  "cylinderHead.lowered": {
    name: "Mill the head face",
    datum: "the old face, camshaft or guide axis square to it",
    joint: "bare head, after seats and guides",
    finish: ["cylinderHead.faceRoughness", "cylinderHead.faceFlatness"],
  },
  "cylinderHead.chamberVolume": {
    name: "Finish the chambers",
    datum: "head face; measured with the valves and the plug of the build",
    joint: "valves held shut, plug in",
    finish: ["cylinderHead.chamberSpread"],
  },
  "inletValve.pocketDepth": {
    name: "Cut the inlet pockets",
    datum: "piston crown",
    joint: "piston alone",
    finish: ["piston.pocketFloor"],
  },
  "exhaustValve.pocketDepth": {
    name: "Cut the exhaust pockets",
    datum: "piston crown",
    joint: "piston alone",
    finish: ["piston.pocketFloor"],
  },
  "inletValve.guideBore": {
    name: "Ream the inlet guides",
    datum: "valve seat",
    joint: "guides pressed in",
    finish: [],
    to: "inletValve",
  },
  "exhaustValve.guideBore": {
    name: "Ream the exhaust guides",
    datum: "valve seat",
    joint: "guides pressed in",
    finish: [],
    to: "exhaustValve",
  },
  "inletValve.seatWidth": {
    name: "Cut the inlet seats",
    datum: "guide axis",
    joint: "guides finished",
    finish: [],
  },
  "exhaustValve.seatWidth": {
    name: "Cut the exhaust seats",
    datum: "guide axis",
    joint: "guides finished",
    finish: [],
  },
  "valveSpring.installedHeight": {
    name: "Set the spring heights",
    datum: "spring seat to retainer",
    joint: "valve shut, seats finished",
    finish: ["valveSpring.installedHeightSpread"],
  },
  "ringSet.topRingEndGap": {
    name: "File the top ring gaps",
    datum: "ring square in its own finished bore",
    joint: "as the bore was honed",
    finish: [],
  },
  "ringSet.secondRingEndGap": {
    name: "File the second ring gaps",
    datum: "ring square in its own finished bore",
    joint: "as the bore was honed",
    finish: [],
  },
};
