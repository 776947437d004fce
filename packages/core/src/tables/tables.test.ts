import { stressAreaUnified, threadGeometry } from "@trialfit/mechanics";
import { describe, expect, it } from "vitest";
import published from "../../../../tests/reference/published.json" with { type: "json" };
import { toSi } from "../units/convert.ts";
import { unitOf } from "../units/findUnit.ts";
import { parseDimension } from "../units/parseDimension.ts";
import { rationalFromDecimal } from "../units/Rational.ts";
import { materials } from "./materials.ts";
import { propertyClasses } from "./propertyClasses.ts";
import { threads } from "./threads.ts";
import { type ToleranceGrade, toleranceWidth } from "./toleranceGrades.ts";

interface Row {
  readonly id: string;
  readonly expected: Readonly<Record<string, { readonly value: unknown; readonly unit: string }>>;
}
const rowOf = (id: string) => (published as unknown as readonly Row[]).find((row) => row.id === id)!;
const printed = (id: string, key: string) => Number(rowOf(id).expected[key.replaceAll(" ", "_")]!.value);

describe("property classes: strengths as printed", () => {
  const metric = ["8.8", "10.9", "12.9"].flatMap((word) =>
    (["proof", "yield", "tensile"] as const).map((kind) => [word, kind] as const),
  );
  it.each(metric)("class %s: %s (TH-09, ISO 898-1)", (word, kind) =>
    expect(propertyClasses[word]![kind]).toBe(printed("TH-09", `${kind} ${word.replace(".", "p")}`)),
  );
  const inch = ["5", "8"].flatMap((word) =>
    (["proof", "yield", "tensile"] as const).map((kind) => [word, kind] as const),
  );
  it.each(inch)("grade %s: %s (TH-07, SAE J429)", (word, kind) =>
    expect(propertyClasses[`grade-${word}`]![kind] / 6.894757).toBeCloseTo(
      printed("TH-07", `grade${word} ${kind}`),
      9,
    ),
  );
  const loads = [
    ["8.8", "8p8"],
    ["10.9", "10p9"],
  ].flatMap(([word, key]) => [8, 10, 12].map((size) => [word!, key!, size] as const));
  it.each(loads)("class %s: least breaking load (row %s) of M%s (TH-03, ISO 898-1)", (word, key, size) => {
    const thread = Object.entries(threads).find(([name]) => name.startsWith(`M${size}x`))![1];
    const area = threadGeometry({
      majorDiameter: parseDimension(thread.diameter, { unit: "mm" }).nominal,
      pitch: parseDimension(thread.pitch, { unit: "mm" }).nominal,
    }).stressArea;
    const found = propertyClasses[word]!.tensile * 1e6 * area;
    expect(Math.abs(found - printed("TH-03", `ultimate load ${key} M${size}`))).toBeLessThanOrEqual(100);
  });
  it.each([8, 10, 12])("class 10.9: proof load of M%s (TH-04, ISO 898-1)", (size) => {
    const thread = Object.entries(threads).find(([name]) => name.startsWith(`M${size}x`))![1];
    const area = threadGeometry({
      majorDiameter: size / 1000,
      pitch: parseDimension(thread.pitch, { unit: "mm" }).nominal,
    }).stressArea;
    expect(Math.abs(830e6 * area - printed("TH-04", `proof load 10p9 M${size}`))).toBeLessThanOrEqual(100);
  });
});

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
  const published898 = ["M6", "M8", "M10", "M12"].map(
    (size) => [size, printed("TH-01", `As ${size}`)] as const,
  );
  it.each(published898)("%s coarse is listed as printed (TH-01, ISO 898-1)", (size, area) =>
    expect(listed.find(([name]) => name.startsWith(`${size}x`))![1].stressArea).toContain(`${area}`),
  );
  const publishedInch = [
    ["TH-05", "1/4-20"],
    ["TH-05", "5/16-18"],
    ["TH-05", "3/8-16"],
    ["TH-05", "7/16-14"],
    ["TH-05", "1/2-13"],
    ["TH-06", "1/4-28"],
    ["TH-06", "3/8-24"],
    ["TH-06", "7/16-20"],
  ] as const;
  it.each(publishedInch)("%s: %s is listed as printed (Shigley, after ASME B1.1)", (id, name) =>
    expect(threads[name]!.stressArea).toBe(`${printed(id, `At ${name.replace(/[/-]/g, " ")}`)} in2`),
  );
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

describe("materials: within the spread of the printed values", () => {
  const checks: readonly (readonly [
    id: string,
    key: string,
    material: keyof typeof materials,
    property: "expansion" | "modulus" | "density" | "poisson",
    scale: number,
  ])[] = [
    ["MA-01", "E steel 4340", "steel", "modulus", 1],
    ["MA-01", "E cast aluminium 356p0", "cast-aluminium", "modulus", 1],
    ["MA-01", "E grey iron G3000 low", "grey-iron", "modulus", 1],
    ["MA-01", "E grey iron G3000 high", "grey-iron", "modulus", 1],
    ["MA-01", "E ductile iron 60 40 18", "ductile-iron", "modulus", 1],
    ["MA-02", "cte steel 4340", "steel", "expansion", 1],
    ["MA-02", "cte grey iron", "grey-iron", "expansion", 1],
    ["MA-02", "cte cast aluminium 356p0", "cast-aluminium", "expansion", 1],
    ["MA-02", "cte Ti 6Al 4V", "titanium", "expansion", 1],
    ["MA-03", "density steel 4340", "steel", "density", 1000],
    ["MA-03", "density grey iron", "grey-iron", "density", 1000],
    ["MA-03", "density ductile iron", "ductile-iron", "density", 1000],
    ["MA-04", "E carbon steel", "steel", "modulus", 1],
    ["MA-04", "poisson carbon steel", "steel", "poisson", 1],
    ["MA-04", "E aluminium", "wrought-aluminium", "modulus", 1],
    ["MA-04", "E titanium", "titanium", "modulus", 1],
  ];
  it.each(checks)("%s: %s", (id, key, material, property, scale) => {
    const { usual, spread } = materials[material][property];
    expect(Math.abs(printed(id, key) * scale - usual)).toBeLessThanOrEqual(spread + 1e-9);
  });
});

describe("standard tolerance grades (ISO 286-1)", () => {
  const rows = ["FT-01", "FT-02"].flatMap((id) =>
    Object.entries(rowOf(id).expected).map(([key, { value }]) => {
      const [, grade, , most] = /^IT(\d+)_(\d+)_(\d+)$/.exec(key)!;
      return [id, Number(grade) as ToleranceGrade, Number(most), Number(value)] as const;
    }),
  );
  it("has rows to compare", () => expect(rows.length).toBe(15));
  it.each(rows)("%s: IT%i up to %i mm is %i µm", (_, grade, most, width) => {
    expect(toleranceWidth(grade, most / 1000)! * 1e6).toBeCloseTo(width, 9);
    expect(toleranceWidth(grade, (most - 0.01) / 1000)! * 1e6).toBeCloseTo(width, 9);
  });
  it("gives a hole and a shaft their clearances: 50 H8/g7 (FT-03)", () => {
    const below = 9e-6;
    const [hole, shaft] = [toleranceWidth(8, 0.05)!, toleranceWidth(7, 0.05)!];
    expect((hole + below + shaft) * 1e3).toBeCloseTo(printed("FT-03", "max clearance"), 9);
    expect(below * 1e3).toBeCloseTo(printed("FT-03", "min clearance"), 9);
  });
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
