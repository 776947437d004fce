import { test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { between, deg, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { standInLiftCurve } from "./standInLiftCurve.ts";
import { exampleLobe, exhaustCurve, lobes } from "./valves.test-support.ts";

const inlet = standInLiftCurve(exampleLobe);

test("example", () => {
  near(inlet.exponent, 1.628, 5e-4);
  near(inlet.seatDuration / deg, 294.37, 5e-3);
  nearly(inlet.at(110 * deg).lift, 11 * mm, 1e-15);
  near(inlet.at(110 * deg).slope, 0, 1e-18);
  expect(inlet.at(300 * deg)).toEqual({ lift: 0, slope: 0, curvature: 0 });
  // The exhaust of the cycle before and the one after.
  nearly(exhaustCurve.at(608 * deg).lift, 11 * mm, 1e-12);
});

/** Duration above a lift, found on the curve itself by halving one flank. */
function durationAt(curve: typeof inlet, centre: number, lift: number): number {
  let [above, below] = [centre, centre + curve.seatDuration / 2];
  for (let i = 0; i < 80; i++) {
    const middle = (above + below) / 2;
    if (curve.at(middle).lift > lift) above = middle;
    else below = middle;
  }
  return 2 * (above - centre);
}

test("246 degrees come back out as 4.29351 rad", () => {
  const shorter = { duration: 246 * deg, lift: 1.27 * mm };
  const curve = standInLiftCurve({ ...exampleLobe, shorter });
  near(durationAt(curve, exampleLobe.centre, shorter.lift), 4.29351, 5e-6);
});

describe("properties", () => {
  property.prop([lobes])("both durations come back out", (lobe) => {
    const curve = standInLiftCurve(lobe);
    nearly(durationAt(curve, lobe.centre, lobe.longer.lift), lobe.longer.duration, 1e-10);
    nearly(durationAt(curve, lobe.centre, lobe.shorter.lift), lobe.shorter.duration, 1e-10);
  });

  property.prop([lobes, between(-0.95, 0.95)])("slope and curvature are the derivatives", (lobe, share) => {
    const curve = standInLiftCurve(lobe);
    const angle = lobe.centre + (share * curve.seatDuration) / 2;
    const h = 1e-5;
    const [left, right] = [curve.at(angle - h), curve.at(angle + h)];
    near(curve.at(angle).slope, (right.lift - left.lift) / (2 * h), 1e-8);
    near(curve.at(angle).curvature, (right.slope - left.slope) / (2 * h), 1e-7);
  });

  property.prop([lobes, between(-1, 1)])("symmetric, and repeats with the cycle", (lobe, offset) => {
    const curve = standInLiftCurve(lobe);
    const lift = curve.at(lobe.centre + offset).lift;
    near(curve.at(lobe.centre - offset).lift, lift, 1e-14);
    near(curve.at(lobe.centre + offset - 4 * Math.PI).lift, lift, 1e-14);
  });
});

test("boundary", () => {
  const bad = (change: object) => () => standInLiftCurve({ ...exampleLobe, ...change });
  const short = (duration: number, lift = 1.27 * mm) => ({ shorter: { duration: duration * deg, lift } });
  refuses(bad({ greatestLift: 0 }), "greatestLift");
  refuses(bad(short(276)), "shorter.duration");
  refuses(bad(short(244, 11 * mm)), "shorter.lift");
  refuses(bad(short(244, 0.2 * mm)), "longer.lift");
  // Too steep for any curve that starts without a jump in speed, and too flat for any within the cycle.
  refuses(bad(short(262)), "shorter.duration");
  expect(bad(short(262))).toThrow("exponent must be above 1");
  expect(bad(short(180))).toThrow("more than the cycle");
  expect(() => inlet.at(Number.NaN)).toThrow("angle: found NaN");
  refusesNonFinite(standInLiftCurve, exampleLobe);
});
