import { falls, notSolved, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { deg, mm } from "../check/support.test-support.ts";
import { eightCrank, eightPoints, outlineOf } from "./rodSweep.test-support.ts";
import { rodToCamshaft } from "./rodToCamshaft.ts";
import { rodToCylinderBottom } from "./rodToCylinderBottom.ts";
import { chordClearance } from "./rodToCylinderChordClearance.ts";
import { rodToLobes } from "./rodToLobes.ts";
import { rodToOppositeCylinder } from "./rodToOppositeCylinder.ts";
import { rodToPoint } from "./rodToPoint.ts";
import { rodToRail } from "./rodToRail.ts";

/** Each answer of a sweep is one of a thousand points: one drawn geometry, its inputs found back from it. */
const SAMPLES = 1;
const rod = { crank: eightCrank, outline: outlineOf(eightPoints) };

solvesBack(
  rodToPoint,
  { radius: falls(0, 20 * mm), x: rises(115 * mm, 140 * mm) },
  (v) => rodToPoint({ ...rod, y: 40 * mm, ...v }).clearance,
  SAMPLES,
);
solvesBack(
  rodToCamshaft,
  { lobeRadius: falls(20 * mm, 30 * mm), height: rises(100 * mm, 125 * mm) },
  (v) => rodToCamshaft({ ...rod, across: 0, bankAngle: 90 * deg, ...v }).clearance,
  SAMPLES,
);
solvesBack(
  rodToLobes,
  { baseRadius: falls(14 * mm, 18 * mm) },
  (v) =>
    rodToLobes({
      ...rod,
      ...v,
      across: 0,
      height: 112 * mm,
      bankAngle: 90 * deg,
      liftAt: (angle) => 5 * mm * (1 + Math.cos(angle / 2)),
      followerLean: 0,
      sense: 1,
    }).clearance,
  SAMPLES,
);
solvesBack(
  rodToRail,
  {
    railHalfWidth: rises(95 * mm, 115 * mm),
    railHeight: notSolved(-70 * mm, -58 * mm, "the rod passes the wall above the edge, however low that is"),
  },
  (v) => rodToRail({ ...rod, ...v }).clearance,
  SAMPLES,
);
// So low a cylinder that its wall is what the rod comes near.
const wall = {
  bore: rises(98 * mm, 106 * mm),
  bigEndWidth: falls(20 * mm, 26 * mm),
};
const low = { ...rod, cylinderAxisOffset: 0, cylinderBottomHeight: 55 * mm, planeOffset: 0.4 * mm };
solvesBack(rodToCylinderBottom, wall, (v) => rodToCylinderBottom({ ...low, ...v }).clearance, SAMPLES);
solvesBack(chordClearance, wall, (v) => chordClearance({ ...low, ...v }).clearance, SAMPLES);
solvesBack(
  rodToOppositeCylinder,
  { cylinderBottomHeight: rises(82 * mm, 90 * mm) },
  (v) =>
    rodToOppositeCylinder({
      ...low,
      ...v,
      bore: 104 * mm,
      bigEndWidth: 24 * mm,
      bankAngle: 90 * deg,
      bankStagger: 24 * mm,
    }).clearance,
  SAMPLES,
);
