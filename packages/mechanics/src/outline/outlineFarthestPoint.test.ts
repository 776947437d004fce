import { describe, expect, test } from "vitest";
import { buildOutline } from "./buildOutline.ts";
import { curveU, curveV, outlineCurves } from "./OutlineCurve.ts";
import { outlineFarthestPoint } from "./outlineFarthestPoint.ts";

const box = [
  { u: -0.03, v: 0 },
  { u: -0.03, v: 0.04 },
  { u: 0.02, v: 0.04 },
  { u: 0.02, v: 0.01 },
  { u: 0.06, v: 0.01 },
];

describe("outlineFarthestPoint", () => {
  test("is the corner, and with a limit the farthest point up to it", () => {
    expect(outlineFarthestPoint(buildOutline(box)).radius).toBeCloseTo(Math.hypot(0.06, 0.01), 15);
    expect(outlineFarthestPoint(buildOutline(box), 0.03).radius).toBeCloseTo(0.05, 15);
    expect(() => outlineFarthestPoint(buildOutline(box), -0.031)).toThrow(/uAtMost/);
  });

  test("agrees with plain sampling on rounded outlines cut at a limit", () => {
    const round = buildOutline([
      { u: -0.035, v: 0 },
      { u: 0.03, v: 0.02, arcRadius: 0.036 },
      { u: 0.06, v: 0.01 },
    ]);
    for (const limit of [-0.02, 0, 0.02, 0.05]) {
      let sampled = 0;
      for (const curve of outlineCurves(round)) {
        for (let i = 0; i <= 20_000; i++) {
          const u = curveU(curve, i / 20_000);
          if (u <= limit) sampled = Math.max(sampled, Math.hypot(u, curveV(curve, i / 20_000)));
        }
      }
      const { radius } = outlineFarthestPoint(round, limit);
      expect(radius).toBeGreaterThanOrEqual(sampled - 1e-12);
      expect(radius - sampled).toBeLessThan(5e-6);
    }
  });
});
