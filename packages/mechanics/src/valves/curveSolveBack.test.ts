import { falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { deg, mm } from "../check/support.test-support.ts";
import { liftTableCurve } from "./liftTableCurve.ts";
import { shiftLiftCurve } from "./shiftLiftCurve.ts";
import { standInLiftCurve } from "./standInLiftCurve.ts";
import { exampleLobe, inletCurve, tableOf } from "./valves.test-support.ts";

/** On the closing flank of the example lobe, which has its nose at 110°. */
const CLOSING = 190 * deg;

solvesBack(
  standInLiftCurve,
  {
    greatestLift: rises(9 * mm, 13 * mm),
    centre: rises(100 * deg, 116 * deg),
    shorter: rises(236 * deg, 250 * deg),
  },
  ({ greatestLift, centre, shorter }) =>
    standInLiftCurve({
      ...exampleLobe,
      greatestLift,
      centre,
      shorter: { ...exampleLobe.shorter, duration: shorter },
    }).at(CLOSING).lift,
);

const rows = tableOf(inletCurve, 5);
solvesBack(
  liftTableCurve,
  { scale: goesAs(1, 0.7, 1.4), later: rises(-6 * deg, 6 * deg) },
  ({ scale, later }) =>
    liftTableCurve({
      samples: rows.map(({ angle, lift }) => ({ angle: angle + later, lift: scale * lift })),
      curvatureWindow: 8 * deg,
    }).at(CLOSING).lift,
);

solvesBack(
  shiftLiftCurve,
  { later: rises(-6 * deg, 6 * deg), angle: falls(170 * deg, 210 * deg) },
  ({ later, angle }) => shiftLiftCurve(inletCurve, later).at(angle).lift,
);
