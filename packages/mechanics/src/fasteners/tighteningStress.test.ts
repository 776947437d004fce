import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  between,
  kN,
  MPa,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { threadGeometry } from "./threadGeometry.ts";
import { preloadForYieldUse, tighteningStress, yieldUse } from "./tighteningStress.ts";

const { pitch, pitchDiameter, stressDiameter, stressArea } = threadGeometry({
  majorDiameter: 11 * mm,
  pitch: 1.25 * mm,
});
const thread = { pitch, pitchDiameter, stressDiameter, stressArea };

test("examples", () => {
  near(tighteningStress({ preload: 66 * kN, thread, threadFriction: 0.11 }) / MPa, 1013, 0.6);
  near(yieldUse({ preload: 66 * kN, area: 78.5e-6, yieldStrength: 1200 * MPa }), 0.7006, 5e-5);
});

test("boundary", () => {
  const use = { thread, threadFriction: 0.11, yieldStrength: 1100 * MPa, use: 0.9 };
  refuses(() => preloadForYieldUse({ ...use, use: 1.1 }), "use");
  refuses(() => yieldUse({ preload: 1, area: 0, yieldStrength: 1 }), "area");
  refusesNonFinite(preloadForYieldUse, use);
  refusesNonFinite(tighteningStress, { preload: 66 * kN, thread, threadFriction: 0.11 });
  refusesNonFinite(yieldUse, { preload: 1, area: 1e-4, yieldStrength: 1e9 });
});

property.prop([between(0.01, 0.3)])(
  "friction costs preload; torsion adds to the tension",
  (threadFriction) => {
    const use = { thread, yieldStrength: 1100 * MPa, use: 0.9 };
    const preload = preloadForYieldUse({ ...use, threadFriction });
    expect(preloadForYieldUse({ ...use, threadFriction: threadFriction + 0.01 })).toBeLessThan(preload);
    expect(tighteningStress({ preload, thread, threadFriction })).toBeGreaterThan(
      preload / thread.stressArea,
    );
  },
);

test("elastic torsion is the stricter of the two", () => {
  const preload = preloadForYieldUse({ thread, threadFriction: 0.12, yieldStrength: 1100 * MPa, use: 1 });
  expect(tighteningStress({ preload, thread, threadFriction: 0.12 })).toBeGreaterThan(1100 * MPa);
  nearly(preload / preloadForYieldUse({ thread, threadFriction: 0.12, yieldStrength: 550 * MPa, use: 1 }), 2);
});
