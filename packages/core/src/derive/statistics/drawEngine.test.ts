import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { DimensionValue, FieldValue } from "../../read/FieldValue.ts";
import { readBuild } from "../../read/readBuild.ts";
import { placesOf } from "../places.ts";
import { drawEngine, varyingOf } from "./drawEngine.ts";
import { drawValue, lawOf } from "./drawValue.ts";
import { summarise } from "./summarise.ts";

const dimension = (low: number, high: number, more: Partial<DimensionValue> = {}): DimensionValue => ({
  kind: "dimension",
  low,
  nominal: (low + high) / 2,
  high,
  unit: "mm",
  text: "",
  provenance: "data-sheet",
  toleranceFrom: "stated",
  ...more,
});
const fieldsOf = (list: Readonly<Record<string, FieldValue>>) => new Map(Object.entries(list));
const drawn = (values: ReadonlyMap<string, FieldValue>, seed: number, count: number) =>
  Array.from({ length: count }, (_, number) => drawEngine(varyingOf(values), seed, number));
const scatter = (value: DimensionValue) =>
  summarise(drawn(fieldsOf({ x: value }), 11, 4000).map((engine) => engine.get("x")!))!;

describe("a drawn dimension", () => {
  it("is even where it is assumed, normal with 2 deviations to the end for a reading, with 3 otherwise", () => {
    expect(lawOf(dimension(0, 1, { provenance: "assumed", uncertainty: 1 }))).toEqual({ kind: "even" });
    expect(lawOf(dimension(0, 1, { provenance: "measured", uncertainty: 0.5 }))).toMatchObject({
      deviations: 2,
    });
    expect(lawOf(dimension(0, 1))).toMatchObject({ deviations: 3 });
    // Half-width over √3 for the even law; the other two as the normal distribution cut off there gives them.
    const cases = [
      [dimension(-1, 1, { provenance: "assumed" }), 1 / Math.sqrt(3)],
      [dimension(-1, 1), 0.3289],
      [dimension(-1, 1, { uncertainty: 1 }), 0.4398],
    ] as const;
    for (const [value, deviation] of cases)
      expect(Math.abs(scatter(value).deviation / deviation - 1)).toBeLessThan(0.045);
  });
  it("scatters about the middle of an uneven tolerance", () => {
    const { mean, least, greatest } = scatter({ ...dimension(10, 10.3), nominal: 10 });
    expect(mean).toBeCloseTo(10.15, 2);
    expect(least).toBeGreaterThanOrEqual(10);
    expect(greatest).toBeLessThanOrEqual(10.3);
  });
  it("of several that were measured one by one is that of one of them", () => {
    const positions = { 1: dimension(1, 1.1), 2: dimension(2, 2.1) };
    const whole = dimension(1, 2.1, { positions, elsewhere: dimension(3, 3.1) });
    const numbers = Array.from({ length: 300 }, (_, index) => {
      let calls = 0;
      return drawValue(whole, () => ((index * 7 + calls++ * 131) % 300) / 300);
    });
    expect(new Set(numbers.map(Math.floor))).toEqual(new Set([1, 2, 3]));
  });
});

describe("a drawn engine", () => {
  const tolerance = fc
    .tuple(
      fc.double({ min: -1e3, max: 1e3, noNaN: true }),
      fc.double({ min: 1e-6, max: 10, noNaN: true }),
      fc.constantFrom("assumed" as const, "data-sheet" as const, "measured" as const),
    )
    .map(([low, width, provenance]) => dimension(low, low + width, { provenance }));
  const engine = fc.dictionary(fc.stringMatching(/^[a-z]{1,4}\.[a-z]{1,4}$/), tolerance, {
    minKeys: 1,
    maxKeys: 8,
  });

  test.prop([engine, fc.nat(), fc.nat({ max: 1000 })])(
    "is the same for the same seed, in whatever order, and lies within the tolerances",
    (list, seed, number) => {
      const paths = Object.keys(list);
      const first = drawEngine(varyingOf(fieldsOf(list)), seed, number);
      const turned = Object.fromEntries([...paths].reverse().map((path) => [path, list[path]!]));
      const second = drawEngine(varyingOf(fieldsOf(turned)), seed, number);
      for (const path of paths) {
        const value = first.get(path)!;
        expect(second.get(path)).toBe(value);
        expect(value).toBeGreaterThanOrEqual(list[path]!.low);
        expect(value).toBeLessThanOrEqual(list[path]!.high);
      }
    },
  );
  it("keeps its dimensions when others come or go", () => {
    const bore = { "block.bore": dimension(1, 2) };
    const more = { "a.first": dimension(0, 1), ...bore, "z.last": dimension(0, 1) };
    expect(drawn(fieldsOf(more), 4, 5).map((one) => one.get("block.bore"))).toEqual(
      drawn(fieldsOf(bore), 4, 5).map((one) => one.get("block.bore")),
    );
  });
  it("differs by seed and number, and dimensions alike differ from each other", () => {
    const values = fieldsOf({ a: dimension(0, 1), b: dimension(0, 1) });
    const all = [...drawn(values, 1, 3), ...drawn(values, 2, 3)].flatMap((one) => [...one.values()]);
    expect(new Set(all).size).toBe(12);
  });
  it("has the same journal at both cylinders of a pin, and its own bore at each", () => {
    const { values } = readBuild({
      trialfit: "1",
      name: "Bench twin (invented)",
      block: { layout: "vee", cylinders: "2", bore: { readings: { 1: "90 mm", 2: "90 mm" } } },
      crankshaft: {
        rodsPerPin: "2",
        crankpinDiameter: { readings: { 1: "50 mm" } },
        throws: [
          { pin: "0 deg", bank: "45 deg", position: "0 mm", fires: "45 deg" },
          { pin: "0 deg", bank: "-45 deg", position: "20 mm", fires: "315 deg" },
        ],
      },
    });
    const at = placesOf("cylinder", values).map((place) => drawEngine(varyingOf(values, place), 9, 0));
    const of = (path: string) => at.map((one) => one.get(path));
    expect(of("crankshaft.crankpinDiameter")[0]).toBeDefined();
    expect(new Set(of("crankshaft.crankpinDiameter")).size).toBe(1);
    expect(new Set(of("block.bore")).size).toBe(2);
  });
});
