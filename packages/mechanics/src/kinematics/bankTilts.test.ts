import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, deg, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { bankTilts, inLeaningFrame } from "./bankTilts.ts";

test("one row stands upright, two banks lean half the angle either way", () => {
  expect(bankTilts(0)).toEqual([0]);
  expect(bankTilts(90 * deg)).toEqual([45 * deg, -45 * deg]);
});

test("a camshaft over the crankshaft stands beside the cylinders of a V", () => {
  const height = Math.hypot(78.9, 78.9) * mm;
  const seen = inLeaningFrame({ x: 0, y: height }, 45 * deg);
  near(seen.x / mm, -78.9, 1e-9);
  near(seen.y / mm, 78.9, 1e-9);
});

test("boundary", () => {
  refuses(() => bankTilts(-0.01), "bankAngle");
  refuses(() => bankTilts(3.2), "bankAngle");
  refusesNonFinite(bankTilts, 1);
});

property.prop([between(-1, 1), between(-1, 1), between(-3, 3)])(
  "a point seen from a leaning frame stays as far from the crank axis, and is found back",
  (x, y, tilt) => {
    const there = inLeaningFrame({ x, y }, tilt);
    const back = inLeaningFrame(there, -tilt);
    near(back.x, x, 1e-12);
    near(back.y, y, 1e-12);
    near(Math.hypot(there.x, there.y), Math.hypot(x, y), 1e-12);
  },
);
