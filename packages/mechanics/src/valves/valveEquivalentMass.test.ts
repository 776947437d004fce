import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { valveEquivalentMass } from "./valveEquivalentMass.ts";

const train = {
  valve: 0.104,
  retainer: 0.028,
  spring: 0.165,
  rockerAtValve: 0.022,
  follower: 0.115,
  pushrod: 0.085,
  rockerRatio: 1.6,
};

test("example", () => {
  near(valveEquivalentMass(train) * 1e3, 287.1, 0.05);
});

property.prop([between(1, 2), between(0.1, 5)])(
  "has the kinetic energy of its parts",
  (rockerRatio, speed) => {
    const follower = speed / rockerRatio;
    // A spring held at one end moves in proportion along its length: integral of x^2 over its mass.
    const coils = Array.from(
      { length: 1000 },
      (_, i) => (((i + 0.5) / 1000) * speed) ** 2 * (train.spring / 1000),
    );
    const energy =
      0.5 * (train.valve + train.retainer + train.rockerAtValve) * speed ** 2 +
      0.5 * (train.follower + train.pushrod) * follower ** 2 +
      0.5 * coils.reduce((sum, part) => sum + part, 0);
    nearly(0.5 * valveEquivalentMass({ ...train, rockerRatio }) * speed ** 2, energy, 1e-6);
  },
);

test("boundary", () => {
  refuses(() => valveEquivalentMass({ ...train, valve: 0 }), "valve");
  refuses(() => valveEquivalentMass({ ...train, rockerRatio: 0 }), "rockerRatio");
  refuses(() => valveEquivalentMass({ ...train, pushrod: -1e-9 }), "pushrod");
  refusesNonFinite(valveEquivalentMass, train);
});
