import { describe, expect, it } from "vitest";
import { parseDimension } from "../../units/parseDimension.ts";
import { searchBand } from "../searchBand.ts";
import { rootSumSquare } from "./rootSumSquare.ts";

/**
 * The stack of an electric motor from “Dimensioning and Tolerancing Handbook” (McGraw-Hill), chapter 9, as a chain
 * along the shaft: plus opens the gap between screw and tapped hole, minus closes it. The sizes and the printed
 * results were read in a test that quotes them, tests/test_McGrawHill.py of
 * https://github.com/phcreery/dimstack (commit 08d24bcc); the book itself was not seen.
 */
const stack: readonly (readonly [1 | -1, string])[] = [
  [-1, "0.375 in +0/-0.031"],
  [1, "0.032 in ± 0.002"],
  [1, "0.060 in ± 0.003"],
  [1, "0.438 in +0/-0.015"],
  [1, "0.120 in ± 0.005"],
  [1, "1.500 in +0.010/-0.004"],
  [1, "0.120 in ± 0.005"],
  [1, "0.438 in +0/-0.015"],
  [1, "0.450 in ± 0.007"],
  [-1, "3.019 in +0.012/-0"],
  [1, "0.300 in ± 0.030"],
];
const printed = {
  middle: 0.0615,
  worst: { half: 0.0955, low: -0.034, high: 0.157 },
  likely: { half: 0.0381, low: 0.0234, high: 0.0996 },
};

describe("a stack of eleven lengths, printed in a handbook", () => {
  const inch = 0.0254;
  const tolerances = stack.map(([, text], index) => {
    const { nominal, minus = 0, plus = 0 } = parseDimension(text, { unit: "mm" });
    return { path: `${index}`, low: nominal - minus, nominal, high: nominal + plus };
  });
  const gap = (point: readonly number[]) =>
    point.reduce((total, length, index) => total + stack[index]![0] * length, 0);
  const worst = searchBand(gap, tolerances, gap(tolerances.map(({ nominal }) => nominal)), false);
  const likely = rootSumSquare(gap, tolerances, worst, false);

  it("has the printed worst case", () => {
    expect(worst.low / inch).toBeCloseTo(printed.worst.low, 4);
    expect(worst.high / inch).toBeCloseTo(printed.worst.high, 4);
    expect((worst.high - worst.low) / 2 / inch).toBeCloseTo(printed.worst.half, 4);
  });
  it("has the printed root sum square about the printed middle", () => {
    expect(likely.centre / inch).toBeCloseTo(printed.middle, 4);
    expect((likely.high - likely.low) / 2 / inch).toBeCloseTo(printed.likely.half, 4);
    expect(likely.low / inch).toBeCloseTo(printed.likely.low, 4);
    expect(likely.high / inch).toBeCloseTo(printed.likely.high, 4);
    expect(likely.doubts).toEqual([]);
  });
  it("is spread most by the depth of the tapped hole, then by the screw", () => {
    expect(likely.spread.slice(0, 2).map(({ path }) => path)).toEqual(["10", "0"]);
    expect(likely.spread[0]!.share).toBeCloseTo(0.03 ** 2 / 0.0014498, 3);
  });
});
