import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { bar, between, cm3, deg, mm, near, nearly, refuses, rpm } from "../check/support.test-support.ts";
import { cylinderVolume } from "../volumes/cylinderVolumeAt.ts";
import { burntShare, burntShareOver } from "./burntShare.ts";
import { requireClosedCycle } from "./ClosedCycle.ts";
import { adiabatic, cycles, demoCycle } from "./cycle.test-support.ts";
import { heatForPeak, heatForPeakPressure } from "./heatForPeakPressure.ts";
import { ignitionDelay, knockIntegral } from "./knockIntegral.ts";
import { prepareCycle } from "./prepareCycle.ts";
import {
  indicatedWork,
  pressureAt,
  pressureTraceForHeat,
  pressureTraceForPeak,
  traceOf,
} from "./pressureTrace.ts";
import { grossIndicatedPressure, pressureTraceForWork } from "./pressureTraceForWork.ts";
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

solvesBack(
  burntShare,
  {
    start: falls(-30 * deg, -10 * deg),
    duration: falls(50 * deg, 70 * deg),
    efficiencyFactor: rises(4, 7),
    formFactor: falls(1, 3),
    angle: rises(0, 15 * deg),
  },
  ({ angle, ...burning }) => burntShare(burning, angle),
);
solvesBack(ignitionDelay, {
  octane: goesAs(3.402, 80, 110),
  pressure: goesAs(-1.7, 20 * bar, 120 * bar),
  temperature: falls(650, 1000),
});
solvesBack(
  knockIntegral,
  {
    octane: goesAs(-3.402, 80, 110),
    angularSpeed: goesAs(-1, 1500 * rpm, 9000 * rpm),
    chargeTemperature: rises(310, 380),
    heatCapacityRatio: rises(1.28, 1.36),
  },
  (v) => knockIntegral({ ...v, run: demoRun, until: 30 * deg }),
  3,
);
const demoRun = runClosedCycle(demoCycle, 2500);
solvesBack(
  heatForPeakPressure,
  { peak: rises(110 * bar, 160 * bar) },
  (v) => heatForPeakPressure(adiabatic, v.peak),
  2,
);
solvesBack(
  pressureTraceForHeat,
  { heat: rises(500, 3500) },
  (v) => pressureAt(pressureTraceForHeat(demoCycle, v.heat), 20 * deg),
  3,
);
solvesBack(
  pressureTraceForPeak,
  { peak: rises(110 * bar, 160 * bar) },
  (v) => pressureTraceForPeak(demoCycle, v.peak).heat,
  2,
);
solvesBack(
  pressureTraceForWork,
  { indicated: rises(15 * bar, 35 * bar) },
  (v) => pressureTraceForWork(demoCycle, v.indicated).heat,
  2,
);
solvesBack(
  tracePeak,
  { heat: rises(1500, 3500) },
  (v) => tracePeak(pressureTraceForHeat(demoCycle, v.heat)).pressure,
  2,
);
solvesBack(runClosedCycle, { heat: rises(500, 3500) }, (v) => runClosedCycle(demoCycle, v.heat).work, 3);
solvesBack(
  grossIndicatedPressure,
  { heat: rises(500, 3500) },
  (v) => grossIndicatedPressure(pressureTraceForHeat(demoCycle, v.heat), demoCycle),
  3,
);
const reference = {
  pressure: falls(1 * bar, 3 * bar),
  volume: falls(350 * cm3, 600 * cm3),
  temperature: rises(300, 400),
};
solvesBack(
  wallGasSpeed,
  {
    ...reference,
    meanPistonSpeed: rises(5, 26),
    sweptVolume: rises(350 * cm3, 600 * cm3),
    gas: rises(60 * bar, 120 * bar),
    motored: falls(20 * bar, 50 * bar),
  },
  ({ pressure, volume, temperature, gas, motored, ...engine }) =>
    wallGasSpeed({
      ...engine,
      reference: { pressure, volume, temperature },
      pressure: gas,
      motoredPressure: motored,
    }),
);
solvesBack(
  burningSpeedFactor,
  {
    pressure: goesAs(-1, 1 * bar, 3 * bar),
    volume: goesAs(-1, 350 * cm3, 600 * cm3),
    temperature: goesAs(1, 300, 400),
    sweptVolume: goesAs(1, 350 * cm3, 600 * cm3),
  },
  ({ sweptVolume, ...charge }) => burningSpeedFactor({ sweptVolume, reference: charge }),
);
solvesBack(wallHeatTransfer, {
  bore: goesAs(-0.2, 70 * mm, 110 * mm),
  pressure: goesAs(0.8, 10 * bar, 120 * bar),
  temperature: goesAs(-0.55, 500, 2600),
  gasSpeed: goesAs(0.8, 5, 60),
});

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
