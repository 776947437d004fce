import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { landRatio, ringBackClearance, ringSideClearance } from "./ringGroove.ts";

const back = {
  bore: 86.5 * mm,
  grooveRootDiameter: 78.3 * mm,
  ringRadialWall: 3.1 * mm,
  pistonShift: 0.045 * mm,
};

test("examples", () => {
  near(ringSideClearance({ grooveHeight: 1.23 * mm, ringHeight: 1.2 * mm }) / mm, 0.03, 1e-9);
  near(ringBackClearance(back) / mm, 0.955, 1e-9);
  near(landRatio({ landHeight: 7 * mm, bore: 86.5 * mm }), 0.0809, 5e-5);
});

test("boundary", () => {
  refuses(() => ringSideClearance({ grooveHeight: 0, ringHeight: 1 * mm }), "grooveHeight");
  refuses(() => ringBackClearance({ ...back, pistonShift: -1 * mm }), "pistonShift");
  refusesNonFinite(ringSideClearance, { grooveHeight: 1.23 * mm, ringHeight: 1.2 * mm });
  refusesNonFinite(ringBackClearance, back);
  refusesNonFinite(landRatio, { landHeight: 7 * mm, bore: 86.5 * mm });
});
