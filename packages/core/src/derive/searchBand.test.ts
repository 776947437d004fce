import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { searchBand, type Tolerance } from "./searchBand.ts";

const tolerance = (path: string, low: number, nominal: number, high: number): Tolerance => ({
  path,
  low,
  nominal,
  high,
});
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Largest and least value on a regular grid of the box. */
function sampled(at: (point: readonly number[]) => number, box: readonly Tolerance[], steps: number) {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const visit = (point: readonly number[]) => {
    const next = box[point.length];
    if (next === undefined) {
      const value = at(point);
      low = Math.min(low, value);
      high = Math.max(high, value);
      return;
    }
    for (let step = 0; step <= steps; step += 1)
      visit([...point, next.low + (step / steps) * (next.high - next.low)]);
  };
  visit([]);
  return { low, high };
}

describe("bands", () => {
  const box = fc
    .array(fc.tuple(number(-2, 2), number(0.01, 1), number(0.01, 1)), { minLength: 1, maxLength: 3 })
    .map((parts) =>
      parts.map(([nominal, minus, plus], index) =>
        tolerance(`x${index}`, nominal - minus, nominal, nominal + plus),
      ),
    );
  const weights = fc.array(number(-3, 3), { minLength: 3, maxLength: 3 });

  test.prop([box, weights])("linear: exactly the worst case", (parts, weight) => {
    const at = (point: readonly number[]) =>
      point.reduce((sum, value, index) => sum + weight[index]! * value, 0);
    const nominal = at(parts.map((part) => part.nominal));
    const band = searchBand(at, parts, nominal, false);
    const worst = (sign: 1 | -1) =>
      parts.reduce(
        (sum, part, index) =>
          sum + Math.max(sign * weight[index]! * part.low, sign * weight[index]! * part.high),
        0,
      );
    expect(band.high).toBeCloseTo(worst(1), 9);
    expect(band.low).toBeCloseTo(-worst(-1), 9);
    expect(band.spread.reduce((sum, one) => sum + one.share, 0)).toBeCloseTo(
      band.spread.length > 0 ? 1 : 0,
      9,
    );
  });

  test.prop([box, weights])("monotone and coupled: encloses a dense sampling", (parts, weight) => {
    const at = (point: readonly number[]) =>
      Math.exp(point.reduce((sum, value, index) => sum + 0.3 * weight[index]! * value, 0)) +
      (point[0]! * weight[0]!) ** 3;
    const band = searchBand(at, parts, at(parts.map((part) => part.nominal)), true);
    const grid = sampled(at, parts, 8);
    const slack = 1e-9 * (1 + Math.abs(grid.high) + Math.abs(grid.low));
    expect(band.low).toBeLessThanOrEqual(grid.low + slack);
    expect(band.high).toBeGreaterThanOrEqual(grid.high - slack);
  });

  it("guarded: finds an extreme inside the box, which the plain search misses", () => {
    const at = ([x = 0]: readonly number[]) => 1 - x * x;
    const parts = [tolerance("x", -1, 0.9, 1)];
    expect(searchBand(at, parts, at([0.9]), true).high).toBe(1);
    expect(searchBand(at, parts, at([0.9]), false).high).toBeLessThan(1);
  });

  it("guarded: finds the top of a kink between the points tried, with many other inputs", () => {
    const at = ([x = 0, ...others]: readonly number[]) =>
      others.reduce((sum, value) => sum + value, 0) - 3 * Math.abs(x - 0.37);
    const parts = [tolerance("x", -1, 0.1, 1), ...[1, 2, 3, 4, 5].map((n) => tolerance(`y${n}`, 0, 0.5, 1))];
    const { high } = searchBand(at, parts, at(parts.map((part) => part.nominal)), true);
    expect(high).toBeGreaterThan(5 - 1e-3);
    expect(high).toBeLessThanOrEqual(5);
  });

  it("no tolerance: a band of one value", () => {
    expect(searchBand(() => 7, [], 7, true)).toEqual({ low: 7, high: 7, spread: [] });
  });
});

it("looks behind the corner to which every input alone points away: what closes when all come together", () => {
  const tolerances = Array.from({ length: 9 }, (_, index) => ({
    path: `x${index}`,
    low: 0,
    nominal: 0.5,
    high: 1,
  }));
  // Each input alone raises the value; when nearly all are at their upper ends, it collapses.
  const at = (point: readonly number[]) => {
    const sum = point.reduce((total, one) => total + one, 0);
    return 1 + 0.1 * sum - 20 * Math.max(0, sum - 8.5);
  };
  const band = searchBand(at, tolerances, at(tolerances.map(({ nominal }) => nominal)), true);
  expect(band.low).toBeCloseTo(at(tolerances.map(({ high }) => high)), 9);
});
