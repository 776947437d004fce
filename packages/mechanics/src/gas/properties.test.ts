import { fc, test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { bar, between, cm3, deg, near, nearly, refuses } from "../check/support.test-support.ts";
import { cylinderVolume } from "../volumes/cylinderVolumeAt.ts";
import { burntShareOver } from "./burntShare.ts";
import { requireClosedCycle } from "./ClosedCycle.ts";
import { cycles } from "./cycle.test-support.ts";
import { heatForPeak } from "./heatForPeakPressure.ts";
import { prepareCycle } from "./prepareCycle.ts";
import { indicatedWork, pressureAt, pressureTraceForHeat, traceOf } from "./pressureTrace.ts";
import { runClosedCycle, runPrepared } from "./runClosedCycle.ts";
import { tracePeak } from "./tracePeak.ts";
import {
  boreFactor,
  burningSpeedFactor,
  motoredGasSpeed,
  stateFactor,
  wallGasSpeed,
  wallHeatTransfer,
} from "./wallHeatTransfer.ts";
import { lossByLogOfVolume, lossByPressure, lossBySpeed, lossByVolume } from "./wallLoss.ts";
import { writeVolumes } from "./writeVolumes.ts";

property.prop([between(0.06, 0.12), between(1 * bar, 120 * bar), between(400, 2600), between(1, 60)])(
  "the transfer is the part that stays by the part that follows the gas",
  (bore, pressure, temperature, gasSpeed) => {
    const parts = boreFactor(bore) * stateFactor(pressure, temperature, gasSpeed);
    nearly(wallHeatTransfer({ bore, pressure, temperature, gasSpeed }), parts, 1e-12);
    const charge = { pressure: 2 * bar, volume: 500 * cm3, temperature: 350 };
    const engine = { meanPistonSpeed: gasSpeed, sweptVolume: 450 * cm3, reference: charge };
    const speed = (above: number) =>
      wallGasSpeed({ ...engine, pressure: pressure + above, motoredPressure: pressure });
    nearly(speed(0), motoredGasSpeed(gasSpeed), 1e-12);
    nearly(speed(1 * bar) - speed(0), 1 * bar * burningSpeedFactor(engine), 1e-9);
  },
);

property.prop([
  between(1 * bar, 120 * bar),
  between(20 * cm3, 900 * cm3),
  between(0.05, 3),
  between(0.5, 60),
])(
  "what follows the gas is what follows pressure, volume and speed apart",
  (pressure, volume, massConstant, gasSpeed) => {
    const temperature = (pressure * volume) / massConstant;
    const apart = lossByPressure(pressure) * lossByVolume(volume, massConstant) * lossBySpeed(gasSpeed);
    nearly(apart, stateFactor(pressure, temperature, gasSpeed), 1e-12);
    nearly(lossByLogOfVolume(Math.log(volume / massConstant)), lossByVolume(volume, massConstant), 1e-12);
  },
);

property.prop([cycles, fc.integer({ min: 240, max: 2400 })], { numRuns: 30 })(
  "volumes at nodes and between them are those of their angles, for steps that fill a turn and others",
  ({ cycle }, steps) => {
    for (const one of [cycle, { ...cycle, step: 1 * deg }, { ...cycle, step: (4 * Math.PI) / steps }]) {
      const { angles, volumes, middleVolumes } = prepareCycle(one);
      const volumeAt = cylinderVolume(one.cylinder);
      for (const [i, angle] of angles.entries()) nearly(volumes[i]!, volumeAt(angle), 1e-11);
      for (const [i, volume] of middleVolumes.entries())
        nearly(volume, volumeAt((angles[i]! + angles[i + 1]!) / 2), 1e-11);
      // The last angle is that of the exhaust opening, whatever the step.
      const [ends, middle] = [new Float64Array(2), new Float64Array(1)];
      writeVolumes(one, angles.subarray(-2), ends, middle);
      nearly(ends[1]!, volumes.at(-1)!, 1e-11);
      nearly(middle[0]!, middleVolumes.at(-1)!, 1e-11);
    }
  },
);

property.prop([cycles], { numRuns: 30 })(
  "run in one go or from what was prepared, a cycle is the same, and its peak gives its heat back",
  ({ cycle, heat }) => {
    requireClosedCycle(cycle);
    const prepared = prepareCycle(cycle);
    const run = runPrepared(prepared, heat);
    expect(run.pressures).toEqual(runClosedCycle(cycle, heat).pressures);
    const trace = traceOf(cycle, run, heat);
    expect(trace.pressures).toEqual(pressureTraceForHeat(cycle, heat).pressures);
    const peak = Math.max(...run.pressures);
    const motored = Math.max(...runPrepared(prepared, 0).pressures);
    if (peak > 1.001 * motored) nearly(heatForPeak(prepared, peak), heat, 1e-6);
    // The parabola through three samples never lies below the greatest.
    const found = tracePeak(trace);
    expect(found.pressure).toBeGreaterThanOrEqual(Math.max(...trace.pressures));
    expect(Math.abs(found.angle)).toBeLessThanOrEqual(2 * Math.PI);
  },
);

property.prop([cycles, between(-180, 0), between(0, 180)], { numRuns: 30 })(
  "work over a stretch is that over its two parts, and none at a pressure that does not change over a turn",
  ({ cycle, heat }, from, to) => {
    const trace = pressureTraceForHeat(cycle, heat);
    const work = (a: number, b: number) => indicatedWork(trace, cycle.cylinder, a, b);
    const [a, b] = [Math.round(from) * deg, Math.round(to) * deg];
    near(work(a, 0) + work(0, b), work(a, b), 1e-9 * Math.abs(work(a, b)) + 1e-9);
    const even = { ...trace, pressures: trace.pressures.map(() => 3 * bar) };
    near(indicatedWork(even, cycle.cylinder, 0, 2 * Math.PI), 0, 1e-9);
    const volumeAt = cylinderVolume(cycle.cylinder);
    nearly(
      indicatedWork(even, cycle.cylinder, 0, Math.PI),
      3 * bar * (volumeAt(Math.PI) - volumeAt(0)),
      1e-12,
    );
  },
);

property.prop([between(-40, 10), between(20, 90), between(0.5, 8), between(-0.5, 4)])(
  "nothing is burnt before the start, nothing more after the end, and never less than before",
  (start, duration, efficiencyFactor, formFactor) => {
    const share = burntShareOver({
      start: start * deg,
      duration: duration * deg,
      efficiencyFactor,
      formFactor,
    });
    expect(share((start - 1) * deg)).toBe(0);
    const end = 1 - Math.exp(-efficiencyFactor);
    nearly(share((start + duration + 5) * deg), end, 1e-12);
    const course = Array.from({ length: 20 }, (_, i) => share((start + (i * duration) / 19) * deg));
    for (let i = 1; i < course.length; i++) expect(course[i]!).toBeGreaterThanOrEqual(course[i - 1]!);
  },
);

property.prop([cycles, between(1.01, 3)], { numRuns: 30 })(
  "burning begins while the valves are shut",
  ({ cycle }, factor) => {
    expect(() => requireClosedCycle(cycle)).not.toThrow();
    const late = Math.PI - cycle.exhaustOpening;
    refuses(
      () => requireClosedCycle({ ...cycle, burning: { ...cycle.burning, start: factor * late } }),
      "start",
    );
    refuses(() => requireClosedCycle({ ...cycle, freshRatio: 1 / factor }), "freshRatio");
  },
);

property.prop([cycles, between(-10, 10)], { numRuns: 30 })(
  "a pressure lies between those of the samples beside it, and comes back after two turns",
  ({ cycle, heat }, angle) => {
    const trace = pressureTraceForHeat(cycle, heat);
    const here = pressureAt(trace, angle);
    const below = Math.floor(angle / trace.step) * trace.step;
    const ends = [pressureAt(trace, below), pressureAt(trace, below + trace.step)];
    expect(here).toBeGreaterThanOrEqual(Math.min(...ends) * (1 - 1e-9));
    expect(here).toBeLessThanOrEqual(Math.max(...ends) * (1 + 1e-9));
    nearly(pressureAt(trace, angle + 4 * Math.PI), here, 1e-9);
  },
);
