import { test } from "vitest";
import { bar, kN, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { fireRingLineLoad, headClampRatio } from "./headClamp.ts";

const head = { fasteners: 4, preload: 66 * kN, peakPressure: 158 * bar, sealDiameter: 87.5 * mm };

test("examples and boundary", () => {
  near(headClampRatio(head), 2.779, 1e-3);
  near(fireRingLineLoad({ ...head, clampShare: 1 }) / 1e3, 614.8, 0.1);
  refuses(() => headClampRatio({ ...head, peakPressure: 0 }), "peakPressure");
  refuses(() => fireRingLineLoad({ ...head, clampShare: 1.1 }), "clampShare");
  refusesNonFinite(headClampRatio, head);
  refusesNonFinite(fireRingLineLoad, { ...head, clampShare: 1 });
});
