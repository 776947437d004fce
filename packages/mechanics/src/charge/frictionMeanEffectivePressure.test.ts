import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { bar, between, near, refuses, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { frictionByLoad, frictionBySpeed } from "./frictionMeanEffectivePressure.ts";

const load = { peakPressure: 158 * bar, meanPistonSpeed: 23.2 };

test("examples and boundary", () => {
  near(frictionBySpeed(7400 * rpm) / bar, 4.818, 5e-4);
  near(frictionByLoad(load) / bar, 4.685, 5e-4);
  near(frictionByLoad({ peakPressure: 0, meanPistonSpeed: 0 }) / bar, 0.137, 1e-12);
  refuses(() => frictionBySpeed(0), "angularSpeed");
  refuses(() => frictionByLoad({ ...load, peakPressure: -1 }), "peakPressure");
  refusesNonFinite((one: { angularSpeed: number }) => frictionBySpeed(one.angularSpeed), { angularSpeed: 1 });
  refusesNonFinite(frictionByLoad, load);
});

property.prop([between(10, 1500)])("grows with speed, and faster the higher it is", (speed) => {
  const at = (share: number) => frictionBySpeed(share * speed);
  expect(at(1.1)).toBeGreaterThan(at(1));
  expect(at(1.2) - at(1.1)).toBeGreaterThan(at(1.1) - at(1));
});
