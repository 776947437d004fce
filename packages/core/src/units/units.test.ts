import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { fromSi, toSi } from "./convert.ts";
import { findUnit, unitOf, unitsLike } from "./findUnit.ts";
import { formatNumber } from "./formatNumber.ts";
import { parseDimension } from "./parseDimension.ts";
import { rationalFromDecimal } from "./Rational.ts";
import { unitTable } from "./unitTable.ts";

const si = (text: string, unit: string) => parseDimension(text, { unit }).nominal;

describe("reference: NIST SP 811 (2008), appendix B.8, and exact definitions", () => {
  const table: readonly (readonly [text: string, kind: string, expected: number])[] = [
    ["1 lbf", "N", 4.4482216152605],
    ["1 psi", "Pa", 6894.757293168361],
    ["1 in3", "m3", 16.387064e-6],
    ["1 hp", "W", 745.6998715822702],
    ["1 PS", "W", 735.49875],
    ["1 lbf ft", "N m", 1.3558179483314003],
    ["3.386 in", "m", 0.0860044],
    ["16 lb", "kg", 7.25747792],
    ["7/16 in", "m", 0.0111125],
    ["1 7/16 in", "m", 0.0365125],
    ["2.1 bar", "Pa", 210000],
    ["212 degF", "K", 373.15],
    ["-40 degF", "K", 233.15],
    ["20 °C", "K", 293.15],
    ["7800 rpm", "rad/s", 816.8140899333463],
    ["180 deg", "rad", Math.PI],
    ["440 g/kWh", "kg/J", 440 / 3.6e9],
    ["12e-6 1/K", "1/K", 12e-6],
    ["50 µm", "m", 50e-6],
    ["280 HV", "MPa", 280 * 9.80665e6],
    ["1300 ppm", "1", 0.0013],
    ["1.2 mm2/kW", "m2/W", 1.2e-9],
    ["1 atm", "Pa", 101325],
    ["29.92 inHg", "Pa", 29.92 * 13_595.1 * 9.80665 * 0.0254],
  ];
  it.each(table)("%s", (text, kind, expected) => {
    expect(Math.abs(si(text, kind) / expected - 1)).toBeLessThan(2.3e-16);
  });
  it("covers the printed table", () => expect(table.length).toBe(24));
});

describe("tolerances", () => {
  const parts = (text: string) => {
    const { minus, plus } = parseDimension(text, { unit: "mm" });
    return [minus, plus];
  };
  it("reads symmetric, one-sided, percent and in another unit", () => {
    expect(parts("88.50 mm ± 0.01")).toEqual([0.00001, 0.00001]);
    expect(parts("88.50 mm +/- 0.01 mm")).toEqual([0.00001, 0.00001]);
    expect(parts("3.484 in +0.001/-0")).toEqual([0, 0.0000254]);
    expect(parts("3.484 in +0.001 -0.0005")).toEqual([0.0000127, 0.0000254]);
    expect(parts("100 mm ± 2 %")).toEqual([0.002, 0.002]);
    expect(parts("1 in ± 0.01 mm")).toEqual([0.00001, 0.00001]);
    expect(parts("88.5 mm")).toEqual([undefined, undefined]);
  });
});

describe("words", () => {
  const syntax = { unit: "cm3", words: ["dish", "dome"], wordRequired: true };
  it("reads the word before or after the tolerance", () => {
    expect(parseDimension("11.5 cm3 dish ± 0.3", syntax).word).toBe("dish");
    expect(parseDimension("11.5 cm3 ± 0.3 dome", syntax).word).toBe("dome");
    expect(parseDimension("420 kW at crank", { unit: "kW", words: ["at crank", "at wheels"] }).word).toBe(
      "at crank",
    );
  });
  it("refuses a missing word", () => expect(() => parseDimension("11.5 cm3", syntax)).toThrow(/no word/));
});

describe("refusals", () => {
  it.each([
    ["88.5", /without a unit/],
    ["88,5 mm", /decimal sign as a point/],
    ["88.5 mn", /unknown unit or word "mn"/],
    ["88.5 kg", /measures something else/],
    ["NaN mm", /no number/],
    ["Infinity mm", /no number/],
    ["88.5 mm ±", /not a number/],
    ["88.5 mm ± -0.1", /sign of its own/],
    ["88.5 mm +0.1", /without its lower/],
    ["88.5 mm 0.1", /unknown unit/],
    ["1/0 in", /no number/],
    ["", /no number/],
    ["88.5.1 mm", /no number/],
  ])("%s", (text, message) => expect(() => parseDimension(text, { unit: "mm" })).toThrow(message));
});

describe("properties", () => {
  const decimal = fc.integer({ min: -9_999_999, max: 9_999_999 }).map((n) => (n / 1000).toString());
  test.prop([decimal, fc.constantFrom(...unitTable)])(
    "reading then printing in the same unit comes back",
    (text, unit) => {
      const value = rationalFromDecimal(text);
      expect(value).toBeDefined();
      const back = fromSi(toSi(value!, unit), unit);
      const scale = Math.max(Math.abs(Number(text)), 500);
      expect(Math.abs(back - Number(text))).toBeLessThan(1e-12 * scale);
    },
  );
  it("has no spelling twice, and every kind has an SI unit of factor one", () => {
    const seen = new Set<string>();
    for (const unit of unitTable) {
      for (const spelling of [unit.symbol, ...unit.aliases]) {
        expect(findUnit(spelling)?.symbol, spelling).toBe(unit.symbol);
        expect(seen.has(spelling), spelling).toBe(false);
        seen.add(spelling);
      }
      expect(
        unitsLike(unit).some((other) => toSi(rationalFromDecimal("1")!, other) === 1),
        unit.symbol,
      ).toBe(true);
    }
    expect(seen.size).toBeGreaterThan(100);
  });
  it("prints", () => {
    expect(formatNumber(0.0885, "mm")).toBe("88.5 mm");
    expect(formatNumber(9.6034, "1", { decimals: 2 })).toBe("9.60");
    expect(formatNumber(-0.00000001, "mm", { decimals: 2 })).toBe("0.00 mm");
    expect(formatNumber(1.6201e-3, "mm", { decimals: 2, toward: "up" })).toBe("1.63 mm");
    expect(formatNumber(1.6299e-3, "mm", { decimals: 2, toward: "down" })).toBe("1.62 mm");
    expect(formatNumber(-1.6201e-3, "mm", { decimals: 2, toward: "down" })).toBe("-1.63 mm");
    // What is a decimal but for the error of computing stays one.
    for (const toward of ["up", "down"] as const)
      expect(formatNumber(0.1e-3 + 0.2e-3, "mm", { decimals: 1, toward })).toBe("0.3 mm");
    expect(unitOf("rpm").pi).toBe(1);
  });
});
