import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { buildOutline } from "./buildOutline.ts";
import { halves } from "./halves.test-support.ts";
import { curveU, curveV, outlineCurves } from "./OutlineCurve.ts";
import { outlineDiscs } from "./outlineDiscs.ts";

property.prop([halves])("no point of a stretch of an outline lies outside of its disc", (vertices) => {
  const curves = outlineCurves(buildOutline(vertices));
  const { whole, stretches } = outlineDiscs(curves);
  let next = 0;
  for (const { from, to, ...disc } of stretches) {
    expect(from).toBe(next);
    next = to;
    for (const curve of curves.slice(from, to)) {
      for (let t = 0; t <= 1; t += 1 / 16) {
        const [u, v] = [curveU(curve, t), curveV(curve, t)];
        for (const one of [whole, disc])
          expect(Math.hypot(u - one.u, v - one.v)).toBeLessThanOrEqual(one.radius + 1e-12);
      }
    }
  }
  expect(next).toBe(curves.length);
  expect(whole.v).toBe(0);
});
