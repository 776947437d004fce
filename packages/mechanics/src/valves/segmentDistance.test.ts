import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, refusesNonFinite } from "../check/support.test-support.ts";
import { type Segment, segmentDistance } from "./segmentDistance.ts";

const line = (ax: number, ay: number, bx: number, by: number): Segment => ({ ax, ay, bx, by });
const flat = line(0, 0, 4, 0);

test("examples", () => {
  expect(segmentDistance(flat, line(1, 2, 3, 1))).toBe(1);
  expect(segmentDistance(flat, line(7, 4, 9, 9))).toBe(5);
  expect(segmentDistance(flat, line(5, 0, 9, 0))).toBe(1);
  expect(segmentDistance(flat, line(2, 0, 2, 3))).toBe(0);
  // Crossing: lifting the upright by its lower end parts them first.
  expect(segmentDistance(flat, line(2, -0.5, 2, 3))).toBe(-0.5);
  expect(segmentDistance(flat, line(2, 2, 2, 2))).toBe(2);
  refusesNonFinite(segmentDistance, flat, line(1, 1, 2, 2));
});

const segments = fc
  .tuple(between(-2, 2), between(-2, 2), between(-2, 2), between(-2, 2))
  .map((c) => line(...c));
const moved = (s: Segment, x: number, y: number) => line(s.ax + x, s.ay + y, s.bx + x, s.by + y);

property.prop([segments, segments, between(-0.5, 0.5), between(-0.5, 0.5)])(
  "symmetric, and never changes by more than one of them moves",
  (first, second, x, y) => {
    const distance = segmentDistance(first, second);
    near(segmentDistance(second, first), distance, 1e-12);
    const change = segmentDistance(moved(first, x, y), second) - distance;
    expect(Math.abs(change)).toBeLessThanOrEqual(Math.hypot(x, y) + 1e-9);
  },
);

property.prop([segments, segments], { numRuns: 60 })(
  "apart, it is the least over sampled points",
  (first, second) => {
    const distance = segmentDistance(first, second);
    let least = Number.POSITIVE_INFINITY;
    const at = (s: Segment, t: number) => [s.ax + t * (s.bx - s.ax), s.ay + t * (s.by - s.ay)] as const;
    for (let i = 0; i <= 60; i++) {
      for (let k = 0; k <= 60; k++) {
        const [a, b] = [at(first, i / 60), at(second, k / 60)];
        least = Math.min(least, Math.hypot(a[0] - b[0], a[1] - b[1]));
      }
    }
    if (distance >= 0) near(distance, least, 0.1);
    else expect(least).toBeLessThan(0.1);
    expect(distance).toBeLessThanOrEqual(least + 1e-12);
  },
);
