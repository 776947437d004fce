import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { quantile, summarise } from "./summarise.ts";

describe("summary of drawn values", () => {
  it("is that of the numbers 1 to 101", () => {
    const sampled = summarise(Array.from({ length: 101 }, (_, index) => 101 - index))!;
    expect(sampled).toMatchObject({ engines: 101, mean: 51, median: 51, least: 1, greatest: 101 });
    expect(sampled.low).toBeCloseTo(3.5, 12);
    expect(sampled.high).toBeCloseTo(98.5, 12);
    // n(n + 1)/12 for the whole numbers to n.
    expect(sampled.deviation ** 2).toBeCloseTo((101 * 102) / 12, 9);
  });
  it("is undefined without values, and without scatter for one", () => {
    expect(summarise([])).toBeUndefined();
    expect(summarise([3])).toMatchObject({ engines: 1, mean: 3, deviation: 0, low: 3, high: 3 });
  });
  it("keeps a small scatter of a large value", () => {
    const sampled = summarise([1e9, 1e9 + 1, 1e9 + 2])!;
    expect(sampled.mean).toBe(1e9 + 1);
    expect(sampled.deviation).toBeCloseTo(1, 9);
  });
  test.prop([
    fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 60 }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  ])("keeps its order, whatever the order of the values", (values, share) => {
    const one = summarise(values)!;
    expect(one).toEqual(summarise([...values].reverse()));
    const order = [one.least, one.low, one.median, one.high, one.greatest];
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(one.mean).toBeGreaterThanOrEqual(one.least);
    expect(one.mean).toBeLessThanOrEqual(one.greatest);
    const sorted = [...values].sort((a, b) => a - b);
    const at = quantile(sorted, share);
    expect(sorted.filter((value) => value < at).length).toBeLessThanOrEqual(
      Math.ceil(share * (sorted.length - 1)) + 1e-9,
    );
  });
});
