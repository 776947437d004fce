import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  angles,
  cranks,
  deg,
  near,
  offsetCrank,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { greatestPistonSpeed } from "./greatestPistonSpeed.ts";
import { pistonAcceleration } from "./pistonAcceleration.ts";
import { pistonVelocity } from "./pistonVelocity.ts";

test("example", () => {
  const found = greatestPistonSpeed(offsetCrank, 7800 * rpm);
  near(found.speed, 40.4325, 5e-5);
  // The example comes from a 0.05 degree grid.
  near(found.angle / deg, 73.35, 0.025);
  refusesNonFinite(greatestPistonSpeed, offsetCrank, 100);
});

property.prop([cranks, angles])("no angle is faster, and the acceleration vanishes there", (crank, angle) => {
  const found = greatestPistonSpeed(crank, 1);
  expect(found.speed).toBeGreaterThanOrEqual(Math.abs(pistonVelocity(crank, angle, 1)) * (1 - 1e-12));
  near(pistonAcceleration(crank, found.angle, 1) / crank.throwRadius, 0, 1e-6);
});
