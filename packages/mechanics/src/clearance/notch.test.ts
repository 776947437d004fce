import { test } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, mm, near, offsetCrank, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { notchRadialDepth, notchWall, notchWidthNeeded, oilRingAboveNotch } from "./notch.ts";

const ring = {
  crank: offsetCrank,
  compressionHeight: 28.4 * mm,
  ringPackDepth: 19.09 * mm,
  cylinderBottomHeight: 71 * mm,
  notchHeight: 8 * mm,
};
const width = { rodWidth: 21.8 * mm, sideGap: 1 * mm, axialFloat: 0.4 * mm, cornerRadius: 3 * mm };

test("examples", () => {
  near(oilRingAboveNotch(ring) / mm, 27.81, 5e-3);
  near(notchWall({ wallThickness: 4.6 * mm, notchDepth: 2.5 * mm }) / mm, 2.1, 1e-9);
  near(notchWidthNeeded(width) / mm, 30.6, 1e-9);
});

test("boundary", () => {
  refuses(() => oilRingAboveNotch({ ...ring, notchHeight: -1 * mm }), "notchHeight");
  refuses(() => notchWall({ wallThickness: 4.6 * mm, notchDepth: -1 * mm }), "notchDepth");
  refusesNonFinite(oilRingAboveNotch, ring);
  refusesNonFinite(notchWall, { wallThickness: 4.6 * mm, notchDepth: 2.5 * mm });
  refusesNonFinite(notchWidthNeeded, width);
});

test.prop([between(60, 120), between(0, 25)])(
  "a notch of no depth takes nothing off the wall, at any rounding",
  (bore, side) =>
    near(
      notchRadialDepth({ bore: bore * mm, sideFaceDistance: side * mm, notchDepth: 0, distance: side * mm }),
      0,
      1e-15,
    ),
);

test.prop([between(60, 120), between(0, 25)])("and what it takes is never below zero", (bore, side) => {
  const depth = notchRadialDepth({
    bore: bore * mm,
    sideFaceDistance: side * mm,
    notchDepth: 0,
    distance: side * mm,
  });
  expect(depth).toBeGreaterThanOrEqual(0);
});
