import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, deg, mm, near, refuses } from "../check/support.test-support.ts";
import { eightCrank, eightPoints, outlineOf, sampledLeast } from "./rodSweep.test-support.ts";
import { rodToCamshaft } from "./rodToCamshaft.ts";
import { rodToPoint } from "./rodToPoint.ts";

const outline = outlineOf(eightPoints);
const height = Math.hypot(78.9, 78.9) * mm;
const eight = {
  crank: eightCrank,
  outline,
  across: 0,
  height,
  bankAngle: 90 * deg,
  lobeRadius: 25.4 * mm,
};

test("a camshaft in the valley of an eight: the worked value", () => {
  near(rodToCamshaft(eight).clearance / mm, 1.05, 0.005);
});

test("one row: the camshaft is a round obstacle beside the cylinder", () => {
  const beside = { ...eight, across: 90 * mm, height: 70 * mm, bankAngle: 0 };
  const { crank, lobeRadius: radius } = eight;
  const found = rodToCamshaft(beside);
  expect(found).toEqual(rodToPoint({ crank, outline, x: 90 * mm, y: 70 * mm, radius }));
  const away = (x: number, y: number) => Math.hypot(x - 90 * mm, y - 70 * mm) - radius;
  near(found.clearance, sampledLeast(eightPoints, crank, away), 2e-6);
});

property.prop([between(-3, 3), between(-10, 10), between(20, 80)], { numRuns: 15 })(
  "the worse of two banks, each seen in its own frame; mirrored it is the same",
  (offset, across, half) => {
    const crank = { ...eightCrank, pinLineOffset: offset * mm };
    const geometry = { ...eight, crank, across: across * mm, bankAngle: 2 * half * deg };
    const found = rodToCamshaft(geometry).clearance;
    const single = [1, -1].map((side) => {
      // The bank turned upright about the crank axis, the camshaft with it.
      const [length, from] = [Math.hypot(across * mm, height), Math.atan2(across * mm, height)];
      const angle = from - side * half * deg;
      const [x, y] = [length * Math.sin(angle), length * Math.cos(angle)];
      return rodToPoint({ crank, outline, x, y, radius: 25.4 * mm }).clearance;
    });
    near(found, Math.min(...single), 1e-8);
    const mirrored = {
      ...geometry,
      crank: { ...crank, pinLineOffset: -offset * mm },
      across: -across * mm,
    };
    near(rodToCamshaft(mirrored).clearance, found, 1e-8);
  },
);

test("what the lobe grows by, the clearance loses; a camshaft far off is as far as it is", () => {
  const found = rodToCamshaft(eight).clearance;
  near(rodToCamshaft({ ...eight, lobeRadius: 27 * mm }).clearance, found - 1.6 * mm, 1e-9);
  const far = rodToCamshaft({ ...eight, height: 10 }).clearance;
  expect(far).toBeGreaterThan(10 - 0.3);
  expect(far).toBeLessThan(10);
});

test("boundary", () => {
  refuses(() => rodToCamshaft({ ...eight, lobeRadius: 0 }), "lobeRadius");
  refuses(() => rodToCamshaft({ ...eight, bankAngle: -1 }), "bankAngle");
  refuses(() => rodToCamshaft({ ...eight, height: Number.NaN }), "height");
});
