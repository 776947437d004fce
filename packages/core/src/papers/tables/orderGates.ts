/** What must be known before a part is ordered, by the key of the part. */
export interface OrderGate {
  /** Sizes that must be decided: they stand in the build. */
  readonly fixed: readonly string[];
  /** Sizes that must have been measured: a published one is not enough. */
  readonly measured: readonly string[];
}

/**
 * Gates of the parts that are made or chosen to fit others. A part without a gate waits for nothing. Common practice:
 * what does not come back (custom pistons, a reground crankshaft) is ordered from measured neighbours.
 */
export const orderGates: Readonly<Record<string, OrderGate>> = {
  crankshaft: {
    fixed: ["crankshaft.stroke", "crankshaft.mainJournalDiameter", "crankshaft.crankpinDiameter"],
    measured: ["block.mainHousingBore"],
  },
  connectingRod: {
    fixed: ["connectingRod.length", "crankshaft.crankpinDiameter", "connectingRod.bigEndWidth"],
    measured: ["block.cylinderBottomHeight"],
  },
  piston: {
    fixed: [
      "block.bore",
      "crankshaft.stroke",
      "connectingRod.length",
      "headGasket.compressedThickness",
      "targets.compressionRatio",
      "inletValve.headDiameter",
      "exhaustValve.headDiameter",
    ],
    measured: ["block.deckHeight", "cylinderHead.chamberVolume"],
  },
  pistonPin: { fixed: ["piston.bossSpacing", "connectingRod.smallEndWidth"], measured: ["piston.pinBore"] },
  ringSet: {
    fixed: ["piston.topGrooveHeight", "piston.secondGrooveHeight", "piston.oilGrooveHeight"],
    measured: ["block.bore"],
  },
  mainBearing: {
    fixed: ["mainBearing.lining"],
    measured: ["block.mainHousingBore", "crankshaft.mainJournalDiameter"],
  },
  rodBearing: {
    fixed: ["rodBearing.lining"],
    measured: ["connectingRod.bigEndBore", "crankshaft.crankpinDiameter"],
  },
  headGasket: {
    fixed: ["block.bore", "headGasket.compressedThickness"],
    measured: ["block.deckHeight", "piston.compressionHeight"],
  },
  camshaft: {
    fixed: ["camshaft.inletLobeLift", "camshaft.exhaustLobeLift", "camshaft.inletDuration"],
    measured: [],
  },
  valveSpring: { fixed: ["targets.overspeed", "inletValve.mass"], measured: ["valveSpring.installedHeight"] },
  damper: { fixed: ["crankshaft.inertia", "targets.overspeed"], measured: ["damper.snoutDiameter"] },
  flywheel: { fixed: ["flywheel.boltCircleDiameter", "targets.overspeed"], measured: [] },
};
