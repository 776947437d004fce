import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  between,
  deg,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { liftTableCurve } from "./liftTableCurve.ts";
import { lossOfContactSpeed } from "./lossOfContactSpeed.ts";
import { standInLiftCurve } from "./standInLiftCurve.ts";
import { constantCurve, inletCurve, lobes, tableOf } from "./valves.test-support.ts";

const spring = { seatForce: 900, springRate: 82 / mm };
const nose = { ...spring, equivalentMass: 0.2871, curve: constantCurve(16.19 * mm, 0, -11.5 * mm) };
const train = { seatForce: 300, springRate: 35 / mm, equivalentMass: 0.15, curve: inletCurve };

test("example", () => {
  // The printed 7844.5 takes the force rounded to 2228 N and the mass to 287.1 g.
  const rounded = { ...nose, seatForce: 2228 - 82 * 16.19 };
  near(lossOfContactSpeed(rounded).angularSpeed / rpm, 7844.5, 0.05);
});

test("a measured table gives nearly the speed of the curve it was read from", () => {
  const samples = tableOf(inletCurve, 1).map(({ angle, lift }) => ({
    angle,
    lift: Math.round(lift / (0.01 * mm)) * 0.01 * mm,
  }));
  const measured = { ...train, curve: liftTableCurve({ samples, curvatureWindow: 15 * deg }) };
  nearly(lossOfContactSpeed(measured).angularSpeed, lossOfContactSpeed(train).angularSpeed, 0.02);
});

property.prop([lobes], { numRuns: 40 })(
  "at that speed the spring just holds, everywhere else it holds",
  (lobe) => {
    const curve = standInLiftCurve(lobe);
    const { angularSpeed, angle } = lossOfContactSpeed({ ...train, curve });
    const spare = (at: number) => {
      const { lift, curvature } = curve.at(at);
      return train.seatForce + train.springRate * lift + train.equivalentMass * curvature * angularSpeed ** 2;
    };
    near(spare(angle), 0, 1e-6);
    for (let i = -1440; i < 1440; i++) {
      const at = (i / 4) * deg;
      if (curve.at(at).lift > 0) expect(spare(at)).toBeGreaterThan(-1e-3);
    }
  },
);

property.prop([between(0.05, 0.5)])(
  "a lighter train holds to a higher speed, by the root",
  (equivalentMass) => {
    const half = lossOfContactSpeed({ ...train, equivalentMass: equivalentMass / 2 }).angularSpeed;
    nearly(half / lossOfContactSpeed({ ...train, equivalentMass }).angularSpeed, Math.SQRT2, 1e-12);
  },
);

test("boundary", () => {
  refuses(() => lossOfContactSpeed({ ...train, equivalentMass: 0 }), "equivalentMass");
  refuses(() => lossOfContactSpeed({ ...train, springRate: 0 }), "springRate");
  refuses(() => lossOfContactSpeed({ ...train, curve: constantCurve(1 * mm, 0, 1 * mm) }), "curve");
  refuses(() => lossOfContactSpeed({ ...train, curve: constantCurve(0) }), "curve");
  refusesNonFinite(lossOfContactSpeed, train);
});
