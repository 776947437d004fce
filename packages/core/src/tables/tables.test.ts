import { stressAreaUnified, threadGeometry } from "@trialfit/mechanics";
import { describe, expect, it } from "vitest";
import { toSi } from "../units/convert.ts";
import { unitOf } from "../units/findUnit.ts";
import { parseDimension } from "../units/parseDimension.ts";
import { rationalFromDecimal } from "../units/Rational.ts";
import { threads } from "./threads.ts";
import { toleranceWidth } from "./toleranceGrades.ts";

describe("threads", () => {
  it("have a pitch that can be cut, by their names", () => {
    for (const [name, { diameter, pitch }] of Object.entries(threads)) {
      const [d, p] = [diameter, pitch].map((text) => parseDimension(text, { unit: "mm" }).nominal) as [
        number,
        number,
      ];
      expect(threadGeometry({ majorDiameter: d, pitch: p }).stressArea, name).toBeGreaterThan(0);
    }
    expect(Object.keys(threads).length).toBeGreaterThan(25);
  });
  const listed = Object.entries(threads).filter(([, { stressArea }]) => stressArea !== undefined);
  it.each(listed)("%s: the printed stress area follows from its standard’s formula", (name, thread) => {
    const { diameter, pitch, stressArea } = thread;
    const [majorDiameter, lead] = [diameter, pitch].map(
      (text) => parseDimension(text, { unit: "mm" }).nominal,
    );
    const sizes = { majorDiameter: majorDiameter!, pitch: lead! };
    const found = name.startsWith("M") ? threadGeometry(sizes).stressArea : stressAreaUnified(sizes);
    const [, digits, unit] = /^([\d.]+) (\w+)$/.exec(stressArea!)!;
    const decimals = digits!.split(".")[1]?.length ?? 0;
    const half = parseDimension(`${(0.5 * 10 ** -decimals).toFixed(decimals + 1)} ${unit}`, { unit: unit! });
    const wanted = parseDimension(stressArea!, { unit: unit! });
    expect(Math.abs(found - wanted.nominal)).toBeLessThanOrEqual(half.nominal * (1 + 1e-9));
  });
  it("give the printed area of 7/16-20 (ASME B1.1: 0.1187 in2)", () => {
    const { diameter, pitch } = threads["7/16-20"]!;
    const [d, p] = [diameter, pitch].map((text) => parseDimension(text, { unit: "mm" }).nominal) as [
      number,
      number,
    ];
    const squareInch = toSi(rationalFromDecimal("1")!, unitOf("in2"));
    expect(stressAreaUnified({ majorDiameter: d, pitch: p }) / squareInch).toBeCloseTo(0.1187, 4);
  });
});

describe("standard tolerance grades (ISO 286-1)", () => {
  it("widens with grade and size, and knows nothing beyond its table", () => {
    const grades = [5, 6, 7, 8, 9, 10, 11, 12, 13, 14] as const;
    const sizes = [0.001, 0.005, 0.02, 0.04, 0.09, 0.15, 0.3];
    for (const [index, grade] of grades.slice(1).entries())
      for (const size of sizes)
        expect(toleranceWidth(grade, size)!).toBeGreaterThan(toleranceWidth(grades[index]!, size)!);
    for (const [index, size] of sizes.slice(1).entries())
      expect(toleranceWidth(8, size)!).toBeGreaterThan(toleranceWidth(8, sizes[index]!)!);
    for (const size of [0, -0.01, 0.4, Number.NaN]) expect(toleranceWidth(8, size)).toBeUndefined();
  });
});
