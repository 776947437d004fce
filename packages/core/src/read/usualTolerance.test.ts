import { describe, expect, it } from "vitest";
import { parseDimension } from "../units/parseDimension.ts";
import type { DimensionSpec } from "./FieldSpec.ts";
import { fields } from "./fieldCatalog.ts";
import { readDimension } from "./readDimension.ts";

const dimensions = [...fields].flatMap(([path, { spec }]): [string, DimensionSpec][] =>
  spec.kind === "dimension" ? [[path, spec]] : [],
);

/** The middle of what the field can be, as a person would enter it without a tolerance. */
function bare(spec: DimensionSpec) {
  const [least, most] = spec.range.map((edge) => parseDimension(edge, { unit: spec.unit }));
  const middle = (Number.parseFloat(spec.range[0]) + Number.parseFloat(spec.range[1])) / 2;
  const word = Object.keys(spec.signs ?? {}).find((one) => spec.signs![one] === Math.sign(middle || 1));
  const unit = least!.unit.symbol === "1" ? "" : ` ${least!.unit.symbol}`;
  const written = [`${Math.abs(middle)}${unit}`, word, spec.places?.[0]].filter((one) => one !== undefined);
  expect(least!.unit.symbol).toBe(most!.unit.symbol);
  return readDimension(written.join(" "), spec, "data-sheet").value;
}

describe("a dimension that is entered without a tolerance", () => {
  it("has a usual one, or the reason why it is taken as exact, and never both", () => {
    const neither = dimensions.filter(
      ([, { tolerance, exact }]) => (tolerance === undefined) === (exact === undefined),
    );
    expect(neither.map(([path]) => path)).toEqual([]);
    expect(dimensions.length).toBeGreaterThan(450);
  });
  it("is read with a width, unless that reason is given", () => {
    const counts = { wide: 0, exact: 0 };
    for (const [path, spec] of dimensions) {
      const { low, high, toleranceFrom } = bare(spec);
      counts[spec.exact === undefined ? "wide" : "exact"] += 1;
      if (spec.exact === undefined) expect(high - low, path).toBeGreaterThan(0);
      else expect(high - low, path).toBe(0);
      expect(toleranceFrom, path).toBe(spec.exact === undefined ? "default" : "none");
    }
    expect(counts.wide).toBeGreaterThan(400);
    expect(counts.exact).toBeGreaterThan(20);
    expect(counts.exact).toBeLessThan(0.15 * dimensions.length);
  });
  it("is exact only for a reason that says something", () => {
    const reasons = dimensions.flatMap(([, { exact }]) => exact ?? []);
    expect(reasons.length).toBeGreaterThan(20);
    for (const reason of reasons) expect(reason).toMatch(/^[a-z][^.]{15,}[a-z]$/);
  });
});

describe("a default that gives way to another field", () => {
  it("gives way to what that one gives way to as well, so that all that was forgotten is named at once", () => {
    const unlessOf = (path: string) => fields.get(path)?.spec.assumed?.unless ?? [];
    const giving = [...fields.keys()].filter((path) => unlessOf(path).length > 0);
    const lacking = giving.flatMap((path) =>
      unlessOf(path).flatMap((other) =>
        unlessOf(other)
          .filter((third) => third !== path && !unlessOf(path).includes(third))
          .map((third) => `${path} must give way to ${third}, as ${other} does`),
      ),
    );
    expect(lacking).toEqual([]);
    expect(giving.length).toBeGreaterThan(5);
  });
});
