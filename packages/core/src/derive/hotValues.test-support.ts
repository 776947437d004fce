import { findUnit } from "../units/findUnit.ts";
import { pathsOf } from "./groupsOf.ts";
import { type Findings, over } from "./quantityCatalog.test-support.ts";
import type { Catalog } from "./quantityDraws.test-support.ts";

/** Lengths that are no gap at the temperature at which sizes are measured, and why. */
export const noGaps: Readonly<Record<string, readonly string[]>> = {
  "a dimension of a part or of what is cut from it": [
    "compressionHeightForFlushDeck",
    "compressionHeightForNewStroke",
    "flywheelFastenerEngagementNeeded",
    "headFastenerEngagementNeeded",
    "inletValveLift",
    "exhaustValveLift",
    "journalOverlap",
    "leastCompressionHeight",
    "mainFastenerEngagementNeeded",
    "millingForCompressionRatio",
    "notchDepthNeeded",
    "notchHeightNeeded",
    "notchWallLeft",
    "notchWidthNeeded",
    "pinBoreToOilGroove",
    "ringPackDepth",
    "rodBoltEngagementNeeded",
    "stackHeight",
    "throwRadius",
    "wallLeftBehindNeededNotch",
  ],
  "a place or a way that something moves": [
    "bottomDeadCentreHeight",
    "boreHalfChord",
    "pinLineOffset",
    "pistonStroke",
    "rodOffsetByStagger",
    "strokeGain",
    "topDeadCentreHeight",
  ],
  "how far one part reaches over, into or along another": [
    "bossOverCounterweight",
    "exhaustFollowerEdgeRoom",
    "inletFollowerEdgeRoom",
    "rockerTipSweep",
    "skirtBelowBore",
    "skirtOverCounterweight",
    "smallEndOverCounterweight",
  ],
  "a change, a difference or an error": [
    "clayDifference",
    "compressionHeightChange",
    "exhaustLashHotError",
    "gasketCrush",
    "inletLashHotError",
    "mainBearingClearanceDoubt",
    "mainBearingClearanceMismatch",
    "mainHousingForm",
    "majorCriticalGap",
    "manifoldGapChange",
    "manifoldPortShift",
    "pistonReadingError",
    "rodBearingClearanceDoubt",
    "rodBearingClearanceMismatch",
  ],
  "growth or give, of which hot gaps are made": [
    "bearingTakeUp",
    "blockGrowth",
    "endCylinderShift",
    "exhaustValveHeadGrowth",
    "inletValveHeadGrowth",
    "lashGrowthHot",
    "pinOvalisation",
    "pistonGrowth",
    "pistonRock",
    "rodBoltPermanentSet",
    "rodBoltStretchExpected",
    "rodGrowth",
    "rodStretchAtOverspeed",
    "stackGrowth",
    "stretchAboveLeast",
    "stretchBelowMost",
    "throwGrowth",
  ],
  "stated at another temperature, or hot at once": [
    "camshaftBearingClearanceHot",
    "linerFitHot",
    "mainBearingClearanceColdStart",
    "mainBearingLeastFilm",
    "mainBearingSteadyFilm",
    "rodBearingLeastFilm",
    "rodBearingSteadyFilm",
  ],
  "a height in the air": ["densityAltitude"],
};

/** Plain numbers that are named after a gap are its share of a size, and gaps as well. */
const NAMED_GAP = /clearance(?! volume)|\bgap\b|\bplay\b|float/i;
/** A reason has to say something. */
const LEAST_WORDS = 8;

function reachesTemperature(id: string, catalog: Catalog): boolean {
  return pathsOf(catalog.get(id)!).some(
    (path) =>
      /^conditions\..*Temperature$/.test(path) || (catalog.has(path) && reachesTemperature(path, catalog)),
  );
}

const dimensionOf = (unit: string): string => JSON.stringify(findUnit(unit)!.dimensions);

/**
 * Every gap at the measuring temperature has a hot partner or a reason to be cold only. A length that has neither,
 * and is no partner itself, has to be named as no gap. Counts the gaps.
 */
export function checkHot(catalog: Catalog, given: Readonly<Record<string, readonly string[]>>): Findings {
  const named = Object.values(given).flat();
  const partners = new Set(
    [...catalog.values()].flatMap(({ hot }) =>
      hot !== undefined && "quantity" in hot ? [hot.quantity] : [],
    ),
  );
  const length = dimensionOf("mm");
  const found = over(catalog, (one, fault) => {
    const couldBe =
      dimensionOf(one.unit) === length ||
      (dimensionOf(one.unit) === dimensionOf("1") && NAMED_GAP.test(one.name));
    const excused = named.filter((id) => id === one.id).length;
    const says = Number(one.hot !== undefined) + Number(partners.has(one.id)) + excused;
    if (couldBe && says !== 1)
      fault(
        says === 0
          ? "has no hot value and no reason, and is not said to be no gap"
          : "is said twice to be no gap, or to be cold and hot",
      );
    if (!couldBe && excused > 0) fault("is no length and needs no word");
    if (one.hot === undefined) return 0;
    if ("coldOnly" in one.hot) {
      if (one.hot.coldOnly.split(/\s+/).length < LEAST_WORDS) fault("cold only without a reason");
      return 1;
    }
    const partner = catalog.get(one.hot.quantity);
    if (partner === undefined) fault(`no quantity ${one.hot.quantity}`);
    else if (!reachesTemperature(partner.id, catalog)) fault(`${partner.id} rests on no temperature`);
    else if (
      couldBe &&
      dimensionOf(partner.unit) !== length &&
      dimensionOf(partner.unit) !== dimensionOf(one.unit)
    )
      fault(`${partner.id} is in ${partner.unit}`);
    return 1;
  });
  const strays = named.filter((id) => !catalog.has(id)).map((id) => `${id}: no quantity`);
  return { ...found, faults: [...found.faults, ...strays] };
}
