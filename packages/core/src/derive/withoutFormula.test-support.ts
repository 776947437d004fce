import { isClosed } from "./formulaChecks.test-support.ts";
import { type Findings, over } from "./quantityCatalog.test-support.ts";
import type { Catalog } from "./quantityDraws.test-support.ts";

/** Why quantities have a method in words and no formula; those that read the rows of a table need no other reason. */
export const reasons: Readonly<Record<string, readonly string[]>> = {
  "a search over the crank angle": [
    "accelerationAtOverspeed",
    "dwellAtTopDeadCentre",
    "greatestPistonAcceleration",
    "greatestPistonSpeed",
    "greatestPistonSpeedAngle",
    "pistonToCounterweight",
    "pistonToCounterweightAngle",
    "pistonToPiston",
    "pistonToPistonAngle",
    "skirtToCounterweight",
    "skirtToCounterweightAngle",
    "smallEndToCounterweight",
    "smallEndToCounterweightAngle",
    "squishVelocity",
    "squishVelocityAngle",
    "crankingTorque",
  ],
  "the cylinder model, stepped through the cycle": [
    "crankpinLoadAngle",
    "greatestCrankpinLoad",
    "greatestCylinderTorque",
    "greatestRodCompression",
    "greatestRodTension",
    "greatestSideThrust",
    "knockIntegral",
    "meanCrankpinLoad",
    "meanCylinderTorque",
    "peakPressureAngle",
    "peakPressureEstimate",
    "sideThrustAngle",
  ],
  "the table of solved oil films, or the path of the journal stepped through the cycle": [
    "mainBearingEccentricity",
    "mainBearingFriction",
    "mainBearingPeakPressure",
    "mainBearingSideFlow",
    "mainBearingSteadyFilm",
    "rodBearingEccentricity",
    "rodBearingFlow",
    "rodBearingFriction",
    "rodBearingLeastFilm",
    "rodBearingPeakPressure",
    "rodBearingSteadyFilm",
  ],
  "a table over temperature": [
    "bossReserve",
    "crownFatigueHot",
    "crownYieldHot",
    "pinBendingUseHot",
    "rodBoltHotStrengthUse",
    "rodFatigueHot",
    "rodYieldHot",
  ],
  "one formula or another by where the values lie": [
    "exhaustValveToBore",
    "inletValveToBore",
    "mainBearingFilletRoom",
    "mainFastenerLoad",
    "pushrodReserve",
    "rockerTipSweep",
    "rodBearingFilletRoom",
    "rodBucklingReserve",
  ],
  "an arch or a joint in many steps": [
    "bigEndCapStress",
    "throwStiffnessThroughOverlap",
    "flywheelFastenerClampedCompliance",
    "headFastenerClampedCompliance",
    "mainFastenerClampedCompliance",
    "rodBoltClampedCompliance",
    "smallEndFatigueReserve",
    "smallEndPullStress",
    "smallEndStress",
  ],
  "several steps by the exact motion of the piston or the form of a groove": [
    "crankpinInertiaLoad",
    "inletClosingPressure",
    "mainBearingOilFlow",
  ],
  "the nearest of several, or how many there are": [
    "criticalsInRange",
    "majorCriticalsInRange",
    "nearestMajorCritical",
    "secondCriticalsInRange",
  ],
  "a search over the speed": ["estimatedGreatestTorque", "estimatedGreatestTorqueSpeed"],
};

/** Every quantity without a formula has a reason, and no reason is left for one that has a formula. */
export function checkReasons(catalog: Catalog, given: Readonly<Record<string, readonly string[]>>): Findings {
  const named = Object.values(given).flat();
  const found = over(catalog, (one, fault) => {
    const count = named.filter((id) => id === one.id).length;
    const needsOne = !isClosed(one) && Object.keys(one.tables).length === 0;
    if (count !== (needsOne ? 1 : 0))
      fault(needsOne ? `has ${count} reasons to be without a formula` : "needs no reason");
    return isClosed(one) ? 0 : 1;
  });
  const strays = named.filter((id) => !catalog.has(id)).map((id) => `${id}: no quantity`);
  return { ...found, faults: [...found.faults, ...strays] };
}
