import { fc } from "@fast-check/vitest";
import { expect } from "vitest";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";

export const mm = 1e-3;
export const um = 1e-6;
export const cm3 = 1e-6;
export const deg = Math.PI / 180;
export const rpm = (2 * Math.PI) / 60;
export const kN = 1e3;
export const MPa = 1e6;
export const GPa = 1e9;
export const bar = 1e5;

/** The invented demo engine of the examples: 94 mm stroke, 144.5 mm rod, pin 0.5 mm towards the thrust side. */
export const offsetCrank: SliderCrank = {
  throwRadius: 47 * mm,
  rodLength: 144.5 * mm,
  pinLineOffset: -0.5 * mm,
};
export const centredCrank: SliderCrank = { ...offsetCrank, pinLineOffset: 0 };

/** Agreement within an absolute tolerance: half a unit of the last digit printed in the example. */
export function near(actual: number, expected: number, tolerance: number): void {
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);
}

/** Agreement relative to the expected value. */
export function nearly(actual: number, expected: number, relative = 1e-9): void {
  near(actual, expected, relative * Math.max(Math.abs(expected), 1e-12));
}

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
export const between = double;

/** Mechanisms a reciprocating engine could have, with and without offset. */
export const cranks: fc.Arbitrary<SliderCrank> = fc
  .tuple(double(0.02, 0.08), double(2.6, 5), double(-0.05, 0.05))
  .map(([throwRadius, ratio, offset]) => ({
    throwRadius,
    rodLength: ratio * throwRadius,
    pinLineOffset: offset * ratio * throwRadius,
  }));
export const angles = double(-2 * Math.PI, 2 * Math.PI);

function variants(value: unknown, path: readonly string[]): (readonly string[])[] {
  if (typeof value === "number") return [path];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => variants(inner, [...path, key]));
}

function withValue(input: unknown, [key, ...rest]: readonly string[], value: number): unknown {
  if (key === undefined) return value;
  const copy = Array.isArray(input) ? [...input] : { ...(input as object) };
  const fields = copy as Record<string, unknown>;
  fields[key] = withValue(fields[key], rest, value);
  return copy;
}

/**
 * Holds a function to its promise: every number in its arguments, however deep, is refused when it is not
 * finite, with a RangeError that names it and the value found.
 */
export function refusesNonFinite<A extends readonly unknown[]>(
  fn: (...args: A) => unknown,
  ...args: A
): void {
  expect(() => fn(...args)).not.toThrow();
  const paths = variants(args, []);
  expect(paths.length).toBeGreaterThan(0);
  for (const path of paths) {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      const name = path.filter((key) => !/^\d+$/.test(key)).at(-1) ?? "";
      const call = () => fn(...(withValue(args, path, value) as unknown as A));
      expect(call, `${path.join(".")} = ${value}`).toThrow(RangeError);
      expect(call, `${path.join(".")} = ${value}`).toThrow(`${name}`);
      expect(call).toThrow(`found ${value}`);
    }
  }
}

/** The call is refused with a RangeError whose message names the parameter. */
export function refuses(call: () => unknown, name: string): void {
  expect(call).toThrow(RangeError);
  expect(call).toThrow(new RegExp(`^${name.replace(/[[\]|+]/g, "\\$&")}: found .+, expected .+`));
}
