import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  angles,
  centredCrank,
  cranks,
  deg,
  near,
  offsetCrank,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { greatestPistonAcceleration } from "./greatestPistonAcceleration.ts";
import { pistonAcceleration } from "./pistonAcceleration.ts";

test("examples", () => {
  near(greatestPistonAcceleration(centredCrank, 7800 * rpm).acceleration, 41557.1, 0.05);
  const found = greatestPistonAcceleration(offsetCrank, 7800 * rpm);
  expect(found.acceleration).toBeGreaterThanOrEqual(41557.3 - 0.05);
  expect(Math.abs(Math.sin(found.angle))).toBeLessThan(Math.sin(2 * deg));
  refusesNonFinite(greatestPistonAcceleration, offsetCrank, 100);
});

property.prop([cranks, angles])("no angle has more", (crank, angle) => {
  const { acceleration } = greatestPistonAcceleration(crank, 1);
  expect(acceleration).toBeGreaterThanOrEqual(Math.abs(pistonAcceleration(crank, angle, 1)) * (1 - 1e-12));
});
