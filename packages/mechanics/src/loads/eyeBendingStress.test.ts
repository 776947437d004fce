import { test } from "@fast-check/vitest";
import { expect } from "vitest";
import {
  between,
  deg,
  kN,
  MPa,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { eyeBendingStress, type PulledEye } from "./eyeBendingStress.ts";
import { eyeStress } from "./eyeStress.ts";

const cap: PulledEye = {
  force: 36.7 * kN,
  section: { innerRadius: 25.5 * mm, depth: 7.5 * mm, width: 20 * mm },
  pressure: "cosine",
  heldAngle: 130 * deg,
  lastAngle: 0,
};

test("example by hand: at the middle of the cap, outside", () => {
  // 0.4005 F and -0.0495 F R; R = 29.25 mm: N/A = 98.0 MPa, straight beam 6 M/(b h^2) = 283 MPa, less 8 % outside.
  near(eyeBendingStress(cap).outer / MPa, 98 + 283 * 0.92, 6);
});

test.prop([between(1.2, 3)])("a deeper cap is stressed less, close to the square where it bends", (times) => {
  const deeper = eyeBendingStress({ ...cap, section: { ...cap.section, depth: times * cap.section.depth } });
  expect(deeper.outer).toBeLessThan(eyeBendingStress(cap).outer / times);
});

test.prop([between(0.2, 4), between(0.5, 2)])("grows with the pull, falls with the width", (pull, width) => {
  const other = eyeBendingStress({
    ...cap,
    force: pull * cap.force,
    section: { ...cap.section, width: width * cap.section.width },
  });
  nearly(other.outer, (eyeBendingStress(cap).outer * pull) / width);
  nearly(other.inner, (eyeBendingStress(cap).inner * pull) / width);
});

test("a half ring under an even pull has the mean stress of the eye", () => {
  const even: PulledEye = { ...cap, pressure: "even", heldAngle: 90 * deg, lastAngle: 90 * deg };
  const bore = 2 * cap.section.innerRadius;
  const mean = eyeStress({
    force: cap.force,
    boreDiameter: bore,
    outerDiameter: bore + 2 * cap.section.depth,
    width: cap.section.width,
  });
  nearly(eyeBendingStress(even).inner, mean, 1e-9);
  nearly(eyeBendingStress(even).outer, mean, 1e-9);
});

test.prop([between(90, 180), between(0.05, 1)])("more sections never make it less", (held, share) => {
  const heldAngle = held * deg;
  const part = eyeBendingStress({ ...cap, heldAngle, lastAngle: share * heldAngle });
  const whole = eyeBendingStress({ ...cap, heldAngle, lastAngle: heldAngle });
  expect(whole.inner).toBeGreaterThanOrEqual(part.inner * (1 - 2e-3) - 1e5);
  expect(whole.outer).toBeGreaterThanOrEqual(part.outer * (1 - 2e-3) - 1e5);
});

test("boundary", () => {
  refuses(() => eyeBendingStress({ ...cap, lastAngle: 131 * deg }), "lastAngle");
  refuses(() => eyeBendingStress({ ...cap, lastAngle: -0.1 }), "lastAngle");
  refuses(() => eyeBendingStress({ ...cap, force: 0 }), "force");
  refusesNonFinite(eyeBendingStress, cap);
});
