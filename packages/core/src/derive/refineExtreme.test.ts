import { fc, test } from "@fast-check/vitest";
import { expect } from "vitest";
import { refineExtreme } from "./refineExtreme.ts";
import { finish } from "./Steps.ts";

const ends = ["a", "b", "c"].map((path) => ({ path, low: -1, nominal: 0, high: 1 }));
const share = fc.double({ min: -0.9, max: 0.9, noNaN: true });

test.prop([share, share], { seed: 9, numRuns: 100 })(
  "finds the kink between the points of a grid, where only slanted steps lead on",
  (a, b) => {
    // Spread is about 7. -|x - y / 2 - a| - |y - b| - |z|: along x or y alone every step down the kink loses.
    const at = ([x, y, z]: readonly number[]) =>
      -Math.abs(x! - y! / 2 - a / 2) - Math.abs(y! - b) - Math.abs(z!);
    expect(finish(refineExtreme(at, [0, 0, 0.5], ends))).toBeGreaterThan(-1e-3);
  },
);

test("never leaves the tolerances", () => {
  const at = (point: readonly number[]) => {
    for (const value of point) expect(Math.abs(value)).toBeLessThanOrEqual(1);
    return point[0]! + point[1]! - point[2]!;
  };
  expect(finish(refineExtreme(at, [0, 0, 0], ends))).toBeCloseTo(3, 12);
});
