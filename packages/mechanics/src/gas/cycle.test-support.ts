import { fc } from "@fast-check/vitest";
import { bar, between, cm3, deg, mm, offsetCrank, rpm } from "../check/support.test-support.ts";
import { usualBurning } from "./burntShare.ts";
import type { WorkingCycle } from "./pressureTrace.ts";

/** The invented demo engine: 86.5 mm bore, 94 mm stroke, 69.02 cm3 clearance volume, inlet closing at 68 degrees. */
export const demoCylinder = { crank: offsetCrank, bore: 86.5 * mm, clearanceVolume: 69.02 * cm3 };

/** Without walls. */
export const adiabatic: WorkingCycle = {
  cylinder: demoCylinder,
  inletClosing: 68 * deg,
  exhaustOpening: 60 * deg,
  charge: { pressure: 3.44 * bar, temperature: 343 },
  burning: { start: -16 * deg, duration: 58 * deg, ...usualBurning },
  freshRatio: 1.32,
  burntRatio: 1.28,
  step: deg,
  inletPressure: 2.9 * bar,
  exhaustPressure: 3 * bar,
};
export const demoCycle: WorkingCycle = {
  ...adiabatic,
  walls: { temperature: 450, angularSpeed: 7400 * rpm },
};

/** Cycles of all kinds, and heats for them [J]. */
export const cycles: fc.Arbitrary<{ cycle: WorkingCycle; heat: number }> = fc
  .record({
    clearanceVolume: between(35 * cm3, 90 * cm3),
    inletClosing: between(0, 90 * deg),
    exhaustOpening: between(0, 80 * deg),
    pressure: between(0.4 * bar, 4 * bar),
    temperature: between(290, 420),
    start: between(-40 * deg, 10 * deg),
    duration: between(20 * deg, 90 * deg),
    speed: between(500 * rpm, 9000 * rpm),
    heatPerPressure: between(2e-3, 1.6e-2),
  })
  .map(({ clearanceVolume, pressure, temperature, start, duration, speed, heatPerPressure, ...valves }) => ({
    cycle: {
      ...demoCycle,
      ...valves,
      cylinder: { ...demoCylinder, clearanceVolume },
      charge: { pressure, temperature },
      burning: { start, duration, ...usualBurning },
      walls: { temperature: 450, angularSpeed: speed },
      inletPressure: pressure,
    },
    heat: heatPerPressure * pressure,
  }));
