import { fc } from "@fast-check/vitest";
import { between, deg, mm } from "../check/support.test-support.ts";
import type { LiftCurve } from "./LiftCurve.ts";
import { standInLiftCurve } from "./standInLiftCurve.ts";

/** The invented camshaft of the examples: 11 mm, 276 degrees at 0.25 mm, 244 degrees at 1.27 mm. */
export const exampleLobe = {
  greatestLift: 11 * mm,
  centre: 110 * deg,
  longer: { duration: 276 * deg, lift: 0.25 * mm },
  shorter: { duration: 244 * deg, lift: 1.27 * mm },
};
const plain = ({ at }: LiftCurve): LiftCurve => ({ at });
export const inletCurve = plain(standInLiftCurve(exampleLobe));
export const exhaustCurve = plain(standInLiftCurve({ ...exampleLobe, centre: -112 * deg }));

/** Lobes an engine could have. */
export const lobes = fc
  .tuple(between(0.006, 0.016), between(95, 120), between(240, 310), between(0.1, 0.18))
  .map(([greatestLift, centre, duration, shorterBy]) => ({
    greatestLift,
    centre: centre * deg,
    longer: { duration: duration * deg, lift: 0.02 * greatestLift },
    shorter: { duration: (1 - shorterBy) * duration * deg, lift: 0.11 * greatestLift },
  }));

/** A table read off a curve. */
export function tableOf(curve: LiftCurve, step: number, from = 0): { angle: number; lift: number }[] {
  return Array.from({ length: Math.round(720 / step) }, (_, i) => {
    const angle = (from + i * step) * deg;
    return { angle, lift: curve.at(angle).lift };
  });
}

/** A curve that is the same at every angle, for the formulas behind the sweeps. */
export const constantCurve = (lift: number, slope = 0, curvature = 0): LiftCurve => ({
  at: () => ({ lift, slope, curvature }),
});
