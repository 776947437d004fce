import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, deg, mm, near, offsetCrank, refuses, um } from "../check/support.test-support.ts";
import { eightCrank, eightPoints, hillPoints, outlineOf, sampledLeast } from "./rodSweep.test-support.ts";
import { rodToRail } from "./rodToRail.ts";

const hill = {
  crank: offsetCrank,
  outline: outlineOf(hillPoints),
  railHalfWidth: 97 * mm,
  railHeight: -58 * mm,
};
const eight = {
  crank: { ...eightCrank, pinLineOffset: 1.5 * mm },
  outline: outlineOf(eightPoints),
  railHalfWidth: 110 * mm,
  railHeight: -70 * mm,
  bankAngle: 90 * deg,
};

test("one row: the worked value, and the crank angle lies in the lower half", () => {
  const found = rodToRail(hill);
  near(found.clearance / mm, 6.695, 0.01);
  expect(rodToRail({ ...hill, bankAngle: 0 })).toEqual(found);
});

test("two banks: as near as plain sampling of either rod in the frame of the block", () => {
  const wall = (X: number, Y: number): number => {
    // The nearest point of the metal, which reaches from the rail up to the height of the crank axis.
    const beside = Math.max(Math.abs(X), eight.railHalfWidth);
    const along = Math.min(0, Math.max(eight.railHeight, Y));
    return Math.hypot(beside - Math.abs(X), along - Y);
  };
  const sampled = [45, -45].map((tilt) => {
    const [s, c] = [Math.sin(tilt * deg), Math.cos(tilt * deg)];
    return sampledLeast(eightPoints, eight.crank, (x, y) => wall(x * c + y * s, y * c - x * s));
  });
  const found = rodToRail(eight).clearance;
  near(found, Math.min(...sampled), 2 * um);
  // With an offset pin the banks differ, and the worse one counts.
  expect(Math.abs(sampled[0]! - sampled[1]!)).toBeGreaterThan(0.1 * mm);
});

test("mirrored, the rails are as near", () => {
  const mirrored = { ...eight, crank: { ...eight.crank, pinLineOffset: -1.5 * mm } };
  near(rodToRail(mirrored).clearance, rodToRail(eight).clearance, 1e-8);
});

property.prop([between(70, 120), between(0, 10), between(-90, 0)], { numRuns: 15 })(
  "rails farther out are never nearer, nor by more than they move",
  (halfWidth, more, railHeight) => {
    const at = (width: number) =>
      rodToRail({ ...eight, railHalfWidth: width * mm, railHeight: railHeight * mm }).clearance / mm;
    const [near1, far1] = [at(halfWidth), at(halfWidth + more)];
    expect(far1).toBeGreaterThanOrEqual(near1 - 1e-5);
    expect(far1).toBeLessThanOrEqual(near1 + more + 1e-5);
  },
);

test("boundary", () => {
  refuses(() => rodToRail({ ...hill, railHalfWidth: 0 }), "railHalfWidth");
  refuses(() => rodToRail({ ...hill, bankAngle: 3.2 }), "bankAngle");
  refuses(() => rodToRail({ ...hill, railHeight: Number.NaN }), "railHeight");
});
