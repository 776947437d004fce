import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { searchBand, type Tolerance } from "../searchBand.ts";
import { rootSumSquare } from "./rootSumSquare.ts";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const bandOf = (
  at: (point: readonly number[]) => number,
  tolerances: readonly Tolerance[],
  guarded = false,
) => {
  const worst = searchBand(at, tolerances, at(tolerances.map(({ nominal }) => nominal)), guarded);
  return { worst, likely: rootSumSquare(at, tolerances, worst, guarded) };
};
const even = (halves: readonly number[]): readonly Tolerance[] =>
  halves.map((half, index) => ({ path: `x${index}`, low: 1 - half, nominal: 1, high: 1 + half }));

describe("root sum square", () => {
  const halves = fc.array(number(0.001, 1), { minLength: 1, maxLength: 6 });
  const weights = fc.array(number(-3, 3), { minLength: 6, maxLength: 6 });

  test.prop([halves, weights])(
    "of a weighted sum is the closed form, within the worst case",
    (half, weight) => {
      const at = (point: readonly number[]) =>
        point.reduce((total, value, index) => total + weight[index]! * value, 0);
      const { worst, likely } = bandOf(at, even(half));
      const closed = Math.hypot(...half.map((one, index) => one * weight[index]!));
      expect(likely.high - likely.centre).toBeCloseTo(closed, 9);
      expect(likely.centre - likely.low).toBeCloseTo(closed, 9);
      expect(likely.low).toBeGreaterThanOrEqual(worst.low);
      expect(likely.high).toBeLessThanOrEqual(worst.high);
      if (closed > 1e-6) {
        expect(likely.doubts).toEqual([]);
        expect(likely.spread.reduce((total, { share }) => total + share, 0)).toBeCloseTo(1, 9);
      }
    },
  );

  test.prop([halves, weights])("never reaches beyond the worst case, whatever the shape", (half, weight) => {
    const at = (point: readonly number[]) =>
      Math.max(...point.map((value, index) => Math.abs(weight[index]! * (value - 0.9)))) + point[0]! ** 3;
    const { worst, likely } = bandOf(at, even(half), true);
    expect(likely.low).toBeGreaterThanOrEqual(worst.low);
    expect(likely.high).toBeLessThanOrEqual(worst.high);
  });

  it("counts an input that two parts of the chain share once: x − x has no band", () => {
    const sum = ([x = 0]: readonly number[]) => x - x;
    const twice = ([x = 0]: readonly number[]) => x + x;
    expect(bandOf(sum, even([0.1])).likely).toMatchObject({ low: 0, high: 0, spread: [] });
    // As one input 2·0.1, not √2·0.1 as of two.
    const { likely } = bandOf(twice, even([0.1]));
    expect(likely.high - likely.low).toBeCloseTo(0.4, 12);
  });

  it("takes an uneven tolerance about its middle", () => {
    const uneven = ["a", "b", "c", "d"].map((path) => ({ path, low: 10, nominal: 10, high: 10.1 }));
    const { worst, likely } = bandOf((point) => point.reduce((total, one) => total + one, 0), uneven);
    expect([worst.low, worst.high]).toEqual([40, 40.4]);
    expect(likely.centre).toBeCloseTo(40.2, 12);
    expect(likely.low).toBeCloseTo(40.1, 12);
    expect(likely.high).toBeCloseTo(40.3, 12);
  });

  it("says where it is not to be trusted", () => {
    const turning = ([x = 0]: readonly number[]) => 1 - (x - 1) ** 2;
    expect(bandOf(turning, even([0.5]), true).likely.doubts).toEqual(["turns"]);
    expect(bandOf(([x = 0]) => Math.exp(2 * x), even([1])).likely.doubts).toEqual(["bends"]);
    const together = ([x = 0, y = 0]: readonly number[]) => (x - 1) * (y - 1);
    expect(bandOf(together, even([1, 1]), true).likely.doubts).toEqual(["turns"]);
    expect(bandOf(([x = 0]) => x ** 2, even([0.01])).likely.doubts).toEqual([]);
  });

  it("without tolerances is the value itself", () => {
    expect(bandOf(() => 7, []).likely).toEqual({ low: 7, centre: 7, high: 7, spread: [], doubts: [] });
  });
});
