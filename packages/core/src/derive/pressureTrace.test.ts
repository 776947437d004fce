import { pressureAt, pressureTraceForPeak } from "@trialfit/mechanics";
import { describe, expect, it } from "vitest";
import { parseDimension } from "../units/parseDimension.ts";
import { quantities } from "./generated/quantities.ts";
import {
  type PressureTraceNumbers,
  pressureTrace,
  pressureTraceExample,
  pressureTraceInputs,
  workingCycle,
} from "./pressureTrace.ts";
import { inputSpec } from "./quantityDraws.test-support.ts";

const numbers = Object.fromEntries(
  Object.entries(pressureTraceInputs).map(([name, path]) => [
    name,
    parseDimension(pressureTraceExample[name as keyof typeof pressureTraceExample], {
      unit: inputSpec(path, quantities)!.unit,
    }).nominal,
  ]),
) as PressureTraceNumbers;

describe("pressureTrace", () => {
  it("has the entered peak", () => {
    const { pressures } = pressureTrace(numbers);
    expect(Math.max(...pressures) / numbers.p_max).toBeCloseTo(1, 9);
  });

  it("answers the same numbers from memory, and every other number with another trace", () => {
    const trace = pressureTrace(numbers);
    expect(pressureTrace({ ...numbers })).toBe(trace);
    for (const name of Object.keys(numbers) as (keyof PressureTraceNumbers)[]) {
      const changed = { ...numbers, [name]: numbers[name] * 1.01 };
      const other = pressureTrace(changed);
      expect(other, name).not.toBe(trace);
      expect(
        other.pressures.some((pressure, k) => pressure !== trace.pressures[k]),
        name,
      ).toBe(true);
      expect(other.pressures).toEqual(pressureTraceForPeak(workingCycle(changed), changed.p_max).pressures);
    }
  });

  it("forgets, and finds the same again", () => {
    const trace = pressureTrace(numbers);
    const copy = [...trace.pressures];
    for (let i = 1; i <= 1100; i++) pressureTrace({ ...numbers, p_max: numbers.p_max + i });
    const again = pressureTrace(numbers);
    expect(again).not.toBe(trace);
    expect([...again.pressures]).toEqual(copy);
  });

  it("keeps what is used", () => {
    const trace = pressureTrace(numbers);
    for (let i = 1; i <= 1100; i++) {
      pressureTrace({ ...numbers, p_max: numbers.p_max + i });
      expect(pressureTrace(numbers)).toBe(trace);
    }
  });

  it("says so when compression alone reaches the peak", () => {
    expect(() => pressureTrace({ ...numbers, p_max: 30e5 })).toThrow(RangeError);
  });

  it("is at the manifold pressure in the inlet stroke and at the exhaust pressure before it", () => {
    const trace = pressureTrace({ ...numbers, p_ex: 3.1e5 });
    expect(pressureAt(trace, 2.5 * Math.PI)).toBeCloseTo(2.9e5, 3);
    expect(pressureAt(trace, 1.5 * Math.PI)).toBeCloseTo(3.1e5, 3);
  });
});
