import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { hotRingGap, ringGapClosing, ringGapForFactor } from "./ringGap.ts";

const warming = {
  bore: 86.5 * mm,
  ringExpansion: 12e-6,
  ringTemperatureRise: 210,
  boreExpansion: 11e-6,
  boreTemperatureRise: 140,
};

test("examples", () => {
  near(ringGapClosing(warming) / mm, 0.2663, 5e-5);
  near(hotRingGap({ ...warming, coldGap: 0.5623 * mm }) / mm, 0.296, 5e-4);
  near(ringGapForFactor({ bore: 86.5 * mm, factor: 0.0065 }) / mm, 0.5623, 5e-5);
});

test("boundary", () => {
  refuses(() => hotRingGap({ ...warming, coldGap: -0.1 * mm }), "coldGap");
  refuses(() => ringGapForFactor({ bore: 86.5 * mm, factor: 0 }), "factor");
  refusesNonFinite(ringGapClosing, warming);
  refusesNonFinite(hotRingGap, { ...warming, coldGap: 0.5 * mm });
  refusesNonFinite(ringGapForFactor, { bore: 86.5 * mm, factor: 0.0065 });
});
