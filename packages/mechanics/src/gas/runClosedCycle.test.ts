import { test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { bar, cm3, deg, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { pistonStroke } from "../kinematics/pistonStroke.ts";
import { boreArea } from "../volumes/boreArea.ts";
import { cylinderVolumeAt } from "../volumes/cylinderVolumeAt.ts";
import { burntShare } from "./burntShare.ts";
import type { ClosedCycle } from "./ClosedCycle.ts";
import { adiabatic, cycles, demoCycle, demoCylinder } from "./cycle.test-support.ts";
import { type ClosedCycleRun, runClosedCycle } from "./runClosedCycle.ts";
import { wallGasSpeed, wallHeatTransfer } from "./wallHeatTransfer.ts";

const HEAT = 5600;
const peakOf = ({ angles, pressures }: ClosedCycleRun) => {
  const at = pressures.indexOf(Math.max(...pressures));
  return { pressure: pressures[at]!, angle: angles[at]! };
};
const finer = (cycle: ClosedCycle, by: number): ClosedCycle => ({ ...cycle, step: cycle.step / by });

/** The same first law as a differential equation for the energy, by fourth-order Runge-Kutta: another route. */
function pressuresByRungeKutta(cycle: ClosedCycle, heat: number, steps: number): readonly number[] {
  const { cylinder, charge, burning, freshRatio, burntRatio, walls } = cycle;
  const [from, to] = [cycle.inletClosing - Math.PI, Math.PI - cycle.exhaustOpening];
  const volumeAt = (angle: number) => cylinderVolumeAt({ ...cylinder, angle });
  const first = volumeAt(from);
  const stroke = pistonStroke(cylinder.crank);
  const ratioAt = (angle: number) => freshRatio + (burntRatio - freshRatio) * burntShare(burning, angle);
  const pressureOf = (angle: number, energy: number) => ((ratioAt(angle) - 1) * energy) / volumeAt(angle);
  const lossAt = (angle: number, pressure: number) => {
    if (walls === undefined) return 0;
    const volume = volumeAt(angle);
    const temperature = (charge.temperature * pressure * volume) / (charge.pressure * first);
    const gasSpeed = wallGasSpeed({
      meanPistonSpeed: (stroke * walls.angularSpeed) / Math.PI,
      sweptVolume: boreArea(cylinder.bore) * stroke,
      reference: { ...charge, volume: first },
      pressure,
      motoredPressure: charge.pressure * (first / volume) ** freshRatio,
    });
    const area = 2 * boreArea(cylinder.bore) + (4 * (volume - cylinder.clearanceVolume)) / cylinder.bore;
    const coefficient = wallHeatTransfer({ bore: cylinder.bore, pressure, temperature, gasSpeed });
    return (coefficient * area * (temperature - walls.temperature)) / walls.angularSpeed;
  };
  const rate = (angle: number, energy: number) => {
    const d = 1e-6;
    const pressure = pressureOf(angle, energy);
    const burnt = (burntShare(burning, angle + d) - burntShare(burning, angle - d)) / (2 * d);
    const widening = (volumeAt(angle + d) - volumeAt(angle - d)) / (2 * d);
    return heat * burnt - lossAt(angle, pressure) - pressure * widening;
  };
  const h = (to - from) / steps;
  let energy = (charge.pressure * first) / (ratioAt(from) - 1);
  const pressures = [charge.pressure];
  for (let i = 0; i < steps; i++) {
    const at = from + i * h;
    const k1 = rate(at, energy);
    const k2 = rate(at + h / 2, energy + (h * k1) / 2);
    const k3 = rate(at + h / 2, energy + (h * k2) / 2);
    const k4 = rate(at + h, energy + h * k3);
    energy += (h * (k1 + 2 * k2 + 2 * k3 + k4)) / 6;
    pressures.push(pressureOf(at + h, energy));
  }
  return pressures;
}

describe("example of the invented demo engine", () => {
  // The published recipe changes the ratio at the start of burning, so it takes two runs: compression, then the rest.
  const before = runClosedCycle({ ...adiabatic, charge: { pressure: 3.7 * bar, temperature: 340 } }, 0);
  const start = before.angles.findIndex((angle) => angle > -16.5 * deg);
  const after: ClosedCycle = {
    ...adiabatic,
    inletClosing: 164 * deg - 1e-9,
    charge: { pressure: before.pressures[start]!, temperature: 600 },
    freshRatio: 1.28,
  };
  const peak = peakOf(runClosedCycle(after, 4600));
  test("the peak pressure of the check line, and its angle", () => {
    near(before.angles[start]!, -16 * deg, 1e-9);
    near(peak.pressure / bar, 127.6, 0.15);
    near(peak.angle / deg, 21, 0.5);
  });
});

test.each([adiabatic, demoCycle])("agrees with another integration of the first law", (cycle) => {
  const whole = { ...cycle, exhaustOpening: 64 * deg };
  const other = pressuresByRungeKutta(whole, HEAT, 4 * 228);
  const same = (pressure: number, i: number) => nearly(pressure, other[i]!, 5e-5);
  runClosedCycle(finer(whole, 4), HEAT).pressures.forEach(same);
  runClosedCycle(whole, HEAT).pressures.forEach((pressure, i) => {
    nearly(pressure, other[4 * i]!, 8e-4);
  });
});

test("halving the step divides the error by four without walls; with them a degree is fine enough", () => {
  const burning = { ...adiabatic.burning, duration: 56 * deg };
  const at = (cycle: ClosedCycle, by: number) => {
    const { angles, pressures } = runClosedCycle(finer({ ...cycle, burning, step: 4 * deg }, by), HEAT);
    return pressures[angles.findIndex((angle) => angle > 39.99 * deg)]!;
  };
  const errors = [1, 2, 4].map((by) => at(adiabatic, by) - at(adiabatic, 128));
  for (const i of [0, 1]) near(errors[i]! / errors[i + 1]!, 4, 0.05);
  nearly(at(demoCycle, 4), at(demoCycle, 128), 1e-4);
});

property.prop([cycles], { numRuns: 40 })("no energy is made or lost", ({ cycle, heat }) => {
  const run = runClosedCycle(finer(cycle, 4), heat);
  let work = 0;
  for (let i = 1; i < run.angles.length; i++)
    work += ((run.pressures[i]! + run.pressures[i - 1]!) / 2) * (run.volumes[i]! - run.volumes[i - 1]!);
  // The trapezoid rule over the pressures against first law, change of energy and losses.
  near(work, run.work, 2e-3 * heat);
  expect(run.lost).toBeLessThan(run.released);
});

property.prop([cycles], { numRuns: 40 })(
  "a motored cycle without walls is the adiabatic law",
  ({ cycle }) => {
    const { walls: _, ...without } = cycle;
    const { pressures, volumes, work, lost } = runClosedCycle({ ...without, burntRatio: 1.32 }, 0);
    expect(lost).toBe(0);
    pressures.forEach((pressure, i) => {
      nearly(pressure, cycle.charge.pressure * (volumes[0]! / volumes[i]!) ** 1.32, 1e-10);
    });
    const energy = (i: number) => (pressures.at(i)! * volumes.at(i)!) / 0.32;
    near(work, energy(0) - energy(-1), 1e-9 * energy(0));
  },
);

property.prop([cycles], { numRuns: 40 })(
  "more heat, more pressure everywhere after it",
  ({ cycle, heat }) => {
    const [less, more] = [runClosedCycle(cycle, heat), runClosedCycle(cycle, 1.05 * heat)];
    less.pressures.forEach((pressure, i) => {
      expect(more.pressures[i]!).toBeGreaterThanOrEqual(pressure);
    });
    expect(peakOf(more).pressure).toBeGreaterThanOrEqual(peakOf(less).pressure);
  },
);

test("burning at once at top dead centre is the constant-volume cycle", () => {
  const centred = { ...demoCylinder, crank: { ...demoCylinder.crank, pinLineOffset: 0 } };
  const cycle = {
    ...adiabatic,
    cylinder: centred,
    burntRatio: 1.32,
    step: 0.125 * deg,
    burning: { start: -0.05 * deg, duration: 0.1 * deg, efficiencyFactor: 40, formFactor: 0 },
  };
  const trapped = cylinderVolumeAt({ ...centred, angle: -112 * deg });
  const compressed = 3.44 * bar * (trapped / (69.02 * cm3)) ** 1.32;
  const ideal = compressed + (0.32 * HEAT) / (69.02 * cm3);
  nearly(peakOf(runClosedCycle(cycle, HEAT)).pressure, ideal, 1e-4);
});

test("boundary", () => {
  const run = (change: Partial<ClosedCycle>) => () => runClosedCycle({ ...demoCycle, ...change }, HEAT);
  refuses(run({ inletClosing: Math.PI }), "inletClosing");
  refuses(run({ exhaustOpening: -0.1 }), "exhaustOpening");
  refuses(run({ charge: { pressure: 0, temperature: 300 } }), "pressure");
  refuses(run({ freshRatio: 1 }), "freshRatio");
  refuses(run({ walls: { temperature: 0, angularSpeed: 1 } }), "wallTemperature");
  refuses(run({ step: 0.7 * deg + 1e-4 }), "step");
  refuses(run({ step: 6 * deg }), "step");
  refuses(run({ burning: { ...demoCycle.burning, start: -113 * deg } }), "start");
  refuses(run({ burning: { ...demoCycle.burning, start: 121 * deg } }), "start");
  refuses(() => runClosedCycle(demoCycle, -1), "heat");
  refusesNonFinite((heat: { heat: number }) => runClosedCycle(demoCycle, heat.heat), { heat: 1 });
});
