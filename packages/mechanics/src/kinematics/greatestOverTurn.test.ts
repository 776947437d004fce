import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near } from "../check/support.test-support.ts";
import { greatestBetween, greatestOverTurn } from "./greatestOverTurn.ts";

property.prop([between(0, 6.28)])("finds the top of a cosine anywhere in the turn", (phase) => {
  const found = greatestOverTurn((angle) => Math.cos(angle - phase));
  near(found.value, 1, 1e-14);
  near(Math.cos(found.angle - phase), 1, 1e-12);
  expect(found.angle).toBeGreaterThanOrEqual(0);
  expect(found.angle).toBeLessThan(2 * Math.PI);
});

test("an end point can be the greatest", () => {
  expect(greatestBetween((x) => x, 0, 1)).toEqual({ at: 1, value: 1 });
  expect(greatestBetween((x) => -x, 0, 1)).toEqual({ at: 0, value: -0 });
});

test("of two maxima the higher one is taken", () => {
  const found = greatestBetween((x) => Math.sin(5 * x) + 0.1 * x, 0, 2);
  near(found.at, (Math.PI / 2 + 2 * Math.PI + 0.02) / 5, 1e-4);
});

property.prop([between(-0.0175, 0.0175)])(
  "a top within a degree of the turn's joint is not cut off",
  (phase) => {
    near(greatestOverTurn((angle) => Math.cos(angle - phase)).value, 1, 1e-14);
  },
);

test("of two nearly equal peaks that the grid ranks wrongly the higher one is taken", () => {
  const narrow = (angle: number, centre: number, height: number) =>
    height * Math.exp(40 * (Math.cos(angle - centre) - 1));
  const half = Math.PI / 360;
  const two = (angle: number) => Math.max(narrow(angle, 1, 1.0005), narrow(angle, Math.PI + half, 1.0006));
  near(greatestOverTurn(two).value, 1.0006, 1e-9);
});
