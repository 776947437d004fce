import { fc, test } from "@fast-check/vitest";
import { expect } from "vitest";
import { axisTicks } from "./axisTicks.ts";

const least = fc.double({ min: -1e3, max: 1e3, noNaN: true });
const span = fc.double({ min: 1e-2, max: 1e4, noNaN: true });

test.prop([least, span])("an axis has two to six ticks, all of them on it", (from, width) => {
  const ticks = axisTicks(from, from + width, "1");
  expect(ticks.length).toBeGreaterThanOrEqual(2);
  expect(ticks.length).toBeLessThanOrEqual(6);
  for (const { si } of ticks) {
    expect(si).toBeGreaterThanOrEqual(from - 1e-9 * width);
    expect(si).toBeLessThanOrEqual(from + width * (1 + 1e-9));
  }
  expect(new Set(ticks.map(({ text }) => text)).size).toBe(ticks.length);
});

test("the speed of a piston has more than its zero", () => {
  expect(axisTicks(-43, 46, "m/s").map(({ text }) => text)).toEqual([
    "-40 m/s",
    "-20 m/s",
    "0 m/s",
    "20 m/s",
    "40 m/s",
  ]);
});
