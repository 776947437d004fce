import { test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { bar, cm3, deg, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { adiabatic, cycles, demoCycle, demoCylinder } from "./cycle.test-support.ts";
import { heatForPeakPressure } from "./heatForPeakPressure.ts";
import { indicatedWork, pressureAt, pressureTraceForHeat, pressureTraceForPeak } from "./pressureTrace.ts";

const PEAK = 158 * bar;

describe("a trace for a peak pressure", () => {
  const trace = pressureTraceForPeak(demoCycle, PEAK);
  test("has that peak, after top dead centre, at a sample", () => {
    nearly(Math.max(...trace.pressures), PEAK, 1e-9);
    const at = trace.pressures.indexOf(Math.max(...trace.pressures));
    expect(at).toBeGreaterThan(5);
    expect(at).toBeLessThan(35);
    nearly(pressureAt(trace, at * deg), PEAK, 1e-9);
  });
  test("has the given pressures while the valves are open, and the charge at inlet closing", () => {
    nearly(pressureAt(trace, 250 * deg), 3 * bar);
    nearly(pressureAt(trace, 450 * deg), 2.9 * bar);
    nearly(pressureAt(trace, 360 * deg), 2.95 * bar);
    nearly(pressureAt(trace, 608 * deg), 3.44 * bar);
    nearly(pressureAt(trace, -112 * deg), 3.44 * bar);
    nearly(pressureAt(trace, 180 * deg), 3 * bar);
  });
  test("repeats every two turns and runs straight between samples", () => {
    nearly(pressureAt(trace, 12.25 * deg), 0.75 * trace.pressures[12]! + 0.25 * trace.pressures[13]!);
    nearly(pressureAt(trace, 12.25 * deg + 8 * Math.PI), pressureAt(trace, 12.25 * deg));
    nearly(pressureAt(trace, -30.5 * deg), pressureAt(trace, 689.5 * deg));
    nearly(pressureAt(trace, 719.5 * deg), (trace.pressures[719]! + trace.pressures[0]!) / 2);
  });
  test("does the work of the first law over its closed part", () => {
    nearly(indicatedWork(trace, demoCylinder, -112 * deg, 120 * deg), trace.closed.work, 2e-3);
  });
  test("its gas exchange is the difference of the two pressures, less what the corners round off", () => {
    const around = pressureTraceForHeat(
      { ...demoCycle, inletPressure: 1 * bar, exhaustPressure: 2 * bar },
      0,
    );
    near(indicatedWork(around, demoCylinder, Math.PI, 3 * Math.PI) / (552.4 * cm3), -1 * bar, 0.01 * bar);
  });
});

property.prop([cycles], { numRuns: 60 })(
  "a peak is recovered through the heat it takes",
  ({ cycle, heat }) => {
    const there = pressureTraceForHeat(cycle, heat);
    const motored = pressureTraceForHeat(cycle, 0);
    const peak = Math.max(...there.closed.pressures);
    const unburnt = Math.max(...motored.closed.pressures);
    // A peak that burning does not raise, as late burning may leave it, says nothing about the heat.
    if (peak < 1.0001 * unburnt) return;
    nearly(heatForPeakPressure(cycle, peak), heat, 1e-6);
    nearly(Math.max(...pressureTraceForPeak(cycle, peak).closed.pressures), peak, 1e-9);
    expect(there.pressures.every((pressure) => pressure > 0 && pressure <= peak * (1 + 1e-12))).toBe(true);
  },
);

test("neighbouring peaks give neighbouring traces", () => {
  const [one, other] = [PEAK, PEAK * (1 + 1e-7)].map(
    (peak) => pressureTraceForPeak(demoCycle, peak).pressures,
  );
  one!.forEach((pressure, k) => {
    nearly(other![k]!, pressure, 1e-6);
  });
});

test("valves that open and close at bottom dead centre", () => {
  const trace = pressureTraceForPeak({ ...adiabatic, inletClosing: 0, exhaustOpening: 0 }, PEAK);
  expect(trace.pressures.every(Number.isFinite)).toBe(true);
  nearly(pressureAt(trace, 3 * Math.PI), 3.44 * bar);
});

test("a degree is a fine enough step", () => {
  const coarse = pressureTraceForPeak(demoCycle, PEAK);
  const fine = pressureTraceForPeak({ ...demoCycle, step: deg / 8 }, PEAK);
  nearly(coarse.heat, fine.heat, 2e-3);
  coarse.pressures.forEach((pressure, k) => {
    near(pressure, fine.pressures[8 * k]!, 0.003 * PEAK);
  });
});

test("boundary", () => {
  refuses(() => pressureTraceForPeak(demoCycle, 40 * bar), "peakPressure");
  refuses(() => pressureTraceForPeak({ ...demoCycle, inletPressure: 0 }, PEAK), "inletPressure");
  refuses(() => pressureTraceForPeak({ ...demoCycle, exhaustPressure: -1 }, PEAK), "exhaustPressure");
  refusesNonFinite((one: { peakPressure: number }) => pressureTraceForPeak(demoCycle, one.peakPressure), {
    peakPressure: PEAK,
  });
});
