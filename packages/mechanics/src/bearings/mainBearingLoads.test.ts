import { expect, test } from "vitest";
import { centredCrank, deg, mm, near, nearly, refuses, rpm } from "../check/support.test-support.ts";
import { crankForces } from "../loads/crankForces.ts";
import { CYCLE_SAMPLES, crankpinLoadCycle } from "../loads/crankpinLoadCycle.ts";
import { mainBearingLoads } from "./mainBearingLoads.ts";

const running = {
  crank: centredCrank,
  bore: 86.5 * mm,
  pressureAt: (angle: number) => 4e6 * Math.max(0, Math.cos(angle / 2)) ** 8,
  casePressure: 1e5,
  reciprocatingMass: 0.634,
  rotatingRodMass: 0.405,
  angularSpeed: 7400 * rpm,
};
const crankshaft = {
  rod: crankpinLoadCycle(running),
  rodsPerPin: 1,
  balanceMass: 0,
  throwRadius: 47 * mm,
  angularSpeed: running.angularSpeed,
};
const places = (rows: readonly (readonly [bank: number, position: number, fires: number])[]) =>
  rows.map(([bank, position, fires]) => ({ bank: bank * deg, position: position * mm, fires: fires * deg }));
const four = places([
  [0, 0, 0],
  [0, 95, 540],
  [0, 190, 180],
  [0, 285, 360],
]);
const eight = places([
  [45, 0, 0],
  [-45, 24, 630],
  [45, 112, 270],
  [-45, 136, 180],
  [45, 224, 450],
  [-45, 248, 360],
  [45, 336, 540],
  [-45, 360, 90],
]);

test("a single throw leans half on each of its two bearings", () => {
  const loads = mainBearingLoads({ ...crankshaft, cylinders: four.slice(0, 1) });
  expect(loads).toHaveLength(2);
  for (const { x, y } of loads) {
    nearly(x[40]!, crankshaft.rod.x[40]! / 2);
    nearly(y[40]!, crankshaft.rod.y[40]! / 2);
  }
});

test("the middle main of a flat four takes two throws that stand together, the ends one", () => {
  const loads = mainBearingLoads({ ...crankshaft, cylinders: four });
  expect(loads).toHaveLength(5);
  // A turn after the firing of cylinder 3, gas is low in both neighbours of the middle: twice half a rod's pull.
  const sample = (degrees: number) => degrees / 2;
  const { y } = crankshaft.rod;
  nearly(loads[2]!.y[sample(60)]!, (y[sample(60 - 540 + 720)]! + y[sample(60 - 180 + 720)]!) / 2);
});

test("the mains together carry what all rods press on the crankshaft, taken from the checked functions", () => {
  const forces = crankForces(running);
  const loads = mainBearingLoads({ ...crankshaft, cylinders: eight, rodsPerPin: 2 });
  expect(loads).toHaveLength(5);
  for (let i = 0; i < CYCLE_SAMPLES; i += 15) {
    const angle = (i * 4 * Math.PI) / CYCLE_SAMPLES;
    let [x, y] = [0, 0];
    for (const { bank, fires } of eight) {
      const own = forces(angle - fires).crankpin;
      // Cylinder axes as unit vectors: along it, and a quarter turn on in the sense of rotation.
      x += own.y * Math.sin(bank) + own.x * Math.sin(bank + Math.PI / 2);
      y += own.y * Math.cos(bank) + own.x * Math.cos(bank + Math.PI / 2);
    }
    const sum = (part: "x" | "y") => loads.reduce((total, one) => total + one[part][i]!, 0);
    near(sum("x"), x, 1e-6 * (1 + Math.abs(x)));
    near(sum("y"), y, 1e-6 * (1 + Math.abs(y)));
  }
});

test("a bobweight of the rotating mass takes the rotating pull off every main", () => {
  const inert = { ...running, pressureAt: () => 1e5, reciprocatingMass: 0 };
  const rod = crankpinLoadCycle(inert);
  const without = mainBearingLoads({ ...crankshaft, rod, cylinders: eight, rodsPerPin: 2 });
  const balanced = mainBearingLoads({
    ...crankshaft,
    rod,
    cylinders: eight,
    rodsPerPin: 2,
    balanceMass: 2 * running.rotatingRodMass,
  });
  const greatest = (loads: typeof without) =>
    Math.max(...loads.map(({ x, y }) => Math.max(...x.map((value, i) => Math.hypot(value, y[i]!)))));
  expect(greatest(without)).toBeGreaterThan(5000);
  near(greatest(balanced), 0, 1e-6 * greatest(without));
});

test("the order in which cylinders are listed does not matter", () => {
  const [one, other] = [four, [...four].reverse()].map((cylinders) =>
    mainBearingLoads({ ...crankshaft, cylinders }),
  );
  expect(one).toEqual(other);
});

test("boundary", () => {
  const input = { ...crankshaft, cylinders: four };
  refuses(() => mainBearingLoads({ ...input, rodsPerPin: 3 }), "cylinders");
  refuses(() => mainBearingLoads({ ...input, cylinders: [] }), "cylinders");
  refuses(() => mainBearingLoads({ ...input, balanceMass: -1 }), "balanceMass");
  refuses(() => mainBearingLoads({ ...input, throwRadius: 0 }), "throwRadius");
  refuses(() => mainBearingLoads({ ...input, angularSpeed: Number.NaN }), "angularSpeed");
  refuses(
    () => mainBearingLoads({ ...input, cylinders: [{ bank: 0, position: Number.NaN, fires: 0 }] }),
    "position",
  );
});
