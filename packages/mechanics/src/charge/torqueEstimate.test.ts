import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { falls, goesAs, notSolved, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { bar, between, near, nearly, refuses, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { meanEffectivePressureFromTorque } from "./meanEffectivePressure.ts";
import { fillingShape, greatestTorqueEstimate, torqueEstimate } from "./torqueEstimate.ts";

const engine = {
  brakeMeanEffectivePressure: 12.857 * bar,
  powerSpeed: 7000 * rpm,
  displacement: 2e-3,
  bestShare: 0.75,
  fall: 0.35,
};
const range = { ...engine, lowest: 1500 * rpm, highest: 7600 * rpm };

test("by hand at 3000 rpm: filling 0.9357 of 0.9611, friction 4.47 bar at power and 1.87 bar here", () => {
  const shape = (share: number) => 1 - 0.35 * (share / 0.75 - 1) ** 2;
  const gas = ((12.857 + 4.47) * shape(3 / 7)) / shape(1);
  near(
    torqueEstimate({ ...engine, angularSpeed: 3000 * rpm }),
    ((gas - 1.87) * bar * 2e-3) / (4 * Math.PI),
    1e-9,
  );
});

property.prop([between(0.5, 1.2), between(0, 0.5), between(3000, 9000), between(5, 30)])(
  "at the speed of the known power it gives that power's torque, whatever the shape",
  (bestShare, fall, speed, pressure) => {
    const one = {
      ...engine,
      bestShare,
      fall,
      powerSpeed: speed * rpm,
      brakeMeanEffectivePressure: pressure * bar,
    };
    const torque = torqueEstimate({ ...one, angularSpeed: speed * rpm });
    nearly(
      meanEffectivePressureFromTorque({ torque, displacement: 2e-3, revolutionsPerCycle: 2 }),
      pressure * bar,
      1e-9,
    );
  },
);

property.prop([between(0.5, 1.2), between(0, 0.5), between(0, 1)], { numRuns: 40 })(
  "no speed of the range gives more than the greatest",
  (bestShare, fall, share) => {
    const one = { ...range, bestShare, fall };
    const found = greatestTorqueEstimate(one);
    const angularSpeed = one.lowest + share * (one.highest - one.lowest);
    expect(torqueEstimate({ ...one, angularSpeed })).toBeLessThanOrEqual(found.torque * (1 + 1e-9));
    nearly(torqueEstimate({ ...one, angularSpeed: found.angularSpeed }), found.torque);
    expect(fillingShape({ speedShare: bestShare * (1 + share), bestShare, fall })).toBeLessThanOrEqual(1);
  },
);

solvesBack(fillingShape, {
  speedShare: falls(0.8, 1.2),
  bestShare: rises(0.6, 0.79),
  fall: falls(0.1, 0.5),
});
const known = {
  brakeMeanEffectivePressure: rises(8 * bar, 20 * bar),
  powerSpeed: notSolved(5000 * rpm, 8000 * rpm, "it moves the friction there and the best filling at once"),
  displacement: goesAs(1, 1e-3, 4e-3),
  bestShare: falls(0.7, 0.9),
  fall: falls(0.2, 0.5),
};
// Well below the best filling, where a higher best speed or a steeper fall leaves less.
solvesBack(torqueEstimate, { ...known, angularSpeed: rises(1200 * rpm, 2000 * rpm) });
solvesBack(
  greatestTorqueEstimate,
  {
    brakeMeanEffectivePressure: known.brakeMeanEffectivePressure,
    displacement: known.displacement,
    bestShare: falls(0.55, 0.65),
    fall: rises(0.2, 0.5),
  },
  (v) => greatestTorqueEstimate({ ...range, ...v }).torque,
  5,
);

test("boundary", () => {
  refuses(() => fillingShape({ speedShare: 5, bestShare: 0.75, fall: 0.35 }), "speedShare");
  refuses(() => torqueEstimate({ ...engine, angularSpeed: 0 }), "angularSpeed");
  refuses(() => greatestTorqueEstimate({ ...range, highest: 1500 * rpm }), "highest");
  refusesNonFinite(torqueEstimate, { ...engine, angularSpeed: 3000 * rpm });
  refusesNonFinite(greatestTorqueEstimate, range);
});
