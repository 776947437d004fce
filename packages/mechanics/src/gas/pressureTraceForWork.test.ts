import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { bar, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { cycles, demoCycle } from "./cycle.test-support.ts";
import { pressureTraceForHeat } from "./pressureTrace.ts";
import { grossIndicatedPressure, pressureTraceForWork } from "./pressureTraceForWork.ts";

test("example: a peak of about 150 bar goes with 40 bar of mean pressure, as peaks of 3.5 to 4.5 times it do", () => {
  const trace = pressureTraceForWork(demoCycle, 40 * bar);
  const peak = Math.max(...trace.pressures) / bar;
  expect(peak).toBeGreaterThan(130);
  expect(peak).toBeLessThan(165);
  nearly(grossIndicatedPressure(trace, demoCycle), 40 * bar, 1e-8);
});

property.prop([cycles], { numRuns: 40 })("the mean pressure is the one wanted", ({ cycle, heat }) => {
  const pressure = grossIndicatedPressure(pressureTraceForHeat(cycle, heat), cycle);
  nearly(grossIndicatedPressure(pressureTraceForWork(cycle, pressure), cycle), pressure, 1e-6);
});

// Without walls more heat is more work. Burning far before the dead centre into cold walls can lose more than it adds.
property.prop([cycles], { numRuns: 40 })("without walls the heat is recovered", ({ cycle, heat }) => {
  const { walls: _, ...hot } = cycle;
  const pressure = grossIndicatedPressure(pressureTraceForHeat(hot, heat), hot);
  nearly(pressureTraceForWork(hot, pressure).heat, heat, 1e-6);
});

test("boundary", () => {
  refuses(() => pressureTraceForWork(demoCycle, -5 * bar), "indicatedPressure");
  refusesNonFinite(
    (one: { indicatedPressure: number }) => pressureTraceForWork(demoCycle, one.indicatedPressure),
    { indicatedPressure: 40 * bar },
  );
});
