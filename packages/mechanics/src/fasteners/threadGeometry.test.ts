import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { stressAreaUnified, threadGeometry } from "./threadGeometry.ts";

test("example: 11 x 1.25", () => {
  const thread = threadGeometry({ majorDiameter: 11 * mm, pitch: 1.25 * mm });
  near(thread.stressArea * 1e6, 75.85, 5e-3);
  near(thread.pitchDiameter / mm, 11 - 0.649519 * 1.25, 1e-6);
  near(thread.rootDiameter / mm, 11 - 1.226869 * 1.25, 1e-6);
});

test("example: 7/16-20, in square inches", () => {
  const inch = 25.4 * mm;
  near(stressAreaUnified({ majorDiameter: (7 / 16) * inch, pitch: inch / 20 }) / inch ** 2, 0.1187, 5e-5);
});

test("boundary: a pitch that leaves no root", () => {
  refuses(() => threadGeometry({ majorDiameter: 10 * mm, pitch: 6 * mm }), "pitch");
  refuses(() => stressAreaUnified({ majorDiameter: 10 * mm, pitch: 0 }), "pitch");
  refusesNonFinite(threadGeometry, { majorDiameter: 10 * mm, pitch: 1.5 * mm });
  refusesNonFinite(stressAreaUnified, { majorDiameter: 10 * mm, pitch: 1.5 * mm });
});

property.prop([between(5e-3, 20e-3), between(0.08, 0.2)])(
  "the unified standard cuts the root a little deeper",
  (majorDiameter, part) => {
    const input = { majorDiameter, pitch: part * majorDiameter };
    const thread = threadGeometry(input);
    const ratio = stressAreaUnified(input) / thread.stressArea;
    expect(ratio).toBeLessThan(0.995);
    expect(ratio).toBeGreaterThan(0.98);
    expect(thread.rootDiameter).toBeLessThan(thread.internalMinorDiameter);
    expect(thread.internalMinorDiameter).toBeLessThan(thread.pitchDiameter);
  },
);
