import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  between,
  centredCrank,
  deg,
  mm,
  near,
  nearly,
  refuses,
  rpm,
  um,
} from "../check/support.test-support.ts";
import { crankForces } from "../loads/crankForces.ts";
import { crankpinLoadCycle, cycleValue } from "../loads/crankpinLoadCycle.ts";
import type { CycleBearing } from "./filmCycle.ts";
import { leastFilmOverCycle } from "./leastFilmOverCycle.ts";
import { leastFilmOverSamples } from "./leastFilmOverSamples.ts";
import { shortBearingEccentricity } from "./shortBearing.ts";
import { mobilityAt } from "./shortBearingMobility.ts";

const cylinder = {
  crank: centredCrank,
  bore: 86.5 * mm,
  pressureAt: () => 0,
  casePressure: 0,
  reciprocatingMass: 0.634,
  rotatingRodMass: 0.405,
  angularSpeed: 7800 * rpm,
};
const cycle = crankpinLoadCycle(cylinder);
const sizes = {
  viscosity: 8.25e-3,
  angularSpeed: 7800 * rpm,
  journalDiameter: 48 * mm,
  length: 17.6 * mm,
  radialClearance: 32 * um,
};
const bigEnd: CycleBearing = {
  ...sizes,
  load: (angle) => ({ x: cycleValue(cycle.x, angle), y: cycleValue(cycle.y, angle) }),
  meanTurning: (angle) => (cycleValue(cycle.swing, angle) - 1) / 2,
};

/** The same path by plain small Euler steps, its load worked out anew at each. */
function byEuler(bearing: CycleBearing, stepsPerDegree: number): { film: number; angle: number } {
  const { viscosity, angularSpeed, journalDiameter, length, radialClearance } = bearing;
  const scale = (2 * radialClearance) ** 2 / (viscosity * length * journalDiameter ** 3 * angularSpeed);
  const step = deg / stepsPerDegree;
  let [x, y, film, found] = [0, 0, Number.POSITIVE_INFINITY, 0];
  for (let k = 0; k < 1440 * stepsPerDegree; k++) {
    const angle = k * step;
    const force = bearing.load(angle);
    const size = Math.hypot(force.x, force.y);
    const [ux, uy] = [force.x / size, force.y / size];
    const turning = bearing.meanTurning(angle);
    const mobility = mobilityAt(x * ux + y * uy, y * ux - x * uy, length / journalDiameter);
    const [dx, dy] = [
      scale * size * (mobility.along * ux - mobility.across * uy) - turning * y,
      scale * size * (mobility.along * uy + mobility.across * ux) + turning * x,
    ];
    x += step * dx;
    y += step * dy;
    const here = radialClearance * (1 - Math.hypot(x, y));
    if (angle >= 4 * Math.PI && here < film) [film, found] = [here, angle - 4 * Math.PI];
  }
  return { film, angle: found };
}

test("example: 1.60 um at 271 degrees, a turn on the same", () => {
  const { film, angle } = leastFilmOverCycle(bigEnd);
  near(film / um, 1.599, 0.01);
  near((angle / deg) % 360, 271, 1.5);
});

test("small steps of another method, with the loads of the checked functions, come to the same", () => {
  const forces = crankForces(cylinder);
  const direct = { ...bigEnd, load: (angle: number) => forces(angle).crankpin };
  // Euler's error halves with the step: the limit is as far beyond the finer one.
  const limit = 2 * byEuler(direct, 20).film - byEuler(direct, 10).film;
  nearly(leastFilmOverCycle(bigEnd).film, limit, 3e-3);
});

property.prop([between(500, 20_000)], { numRuns: 10 })(
  "a load that stands still comes to the short bearing's steady eccentricity, within the fit",
  (force) => {
    const standing = {
      ...sizes,
      load: () => ({ x: force * Math.cos(1), y: force * Math.sin(1) }),
      meanTurning: () => -0.5,
    };
    const { film } = leastFilmOverCycle(standing);
    near(1 - film / sizes.radialClearance, shortBearingEccentricity({ ...sizes, load: force }), 0.01);
  },
);

test("a load that turns at half the journal's speed with the journal finds no film by turning: it wins", () => {
  const turning = {
    ...sizes,
    load: (angle: number) => ({ x: 2000 * Math.sin(angle / 2), y: 2000 * Math.cos(angle / 2) }),
    meanTurning: () => -0.5,
  };
  const standing = { ...turning, load: () => ({ x: 0, y: 2000 }) };
  expect(leastFilmOverCycle(turning).film).toBeLessThan(0.5 * leastFilmOverCycle(standing).film);
});

property.prop([between(0.5, 2), between(0.3, 3)], { numRuns: 12 })(
  "thicker oil carries more, a mirror image the same, and like loads the same share of their clearance",
  (factor, size) => {
    const usual = leastFilmOverCycle(bigEnd);
    const thicker = leastFilmOverCycle({ ...bigEnd, viscosity: sizes.viscosity * (1 + factor) });
    expect(thicker.film).toBeGreaterThan(usual.film);
    const mirrored = leastFilmOverCycle({
      ...bigEnd,
      load: (angle) => ({ x: -bigEnd.load(angle).x, y: bigEnd.load(angle).y }),
      meanTurning: (angle) => -bigEnd.meanTurning(angle),
    });
    nearly(mirrored.film, usual.film, 1e-9);
    const scaled = leastFilmOverCycle({
      ...bigEnd,
      journalDiameter: size * sizes.journalDiameter,
      length: size * sizes.length,
      radialClearance: size * sizes.radialClearance,
      load: (angle) => ({ x: size ** 2 * bigEnd.load(angle).x, y: size ** 2 * bigEnd.load(angle).y }),
    });
    nearly(scaled.film, size * usual.film, 1e-6);
  },
);

property.prop([between(0.5, 2), between(0.3, 3), between(-1, 1)], { numRuns: 12 })(
  "read from its samples the load gives the same film",
  (factor, size, turning) => {
    const bearing = {
      ...sizes,
      viscosity: factor * sizes.viscosity,
      radialClearance: size * sizes.radialClearance,
    };
    const same = (sampled: Float64Array | number, meanTurning: (angle: number) => number) => {
      const found = leastFilmOverSamples({ ...bearing, load: cycle, meanTurning: sampled });
      const plain = leastFilmOverCycle({ ...bearing, load: bigEnd.load, meanTurning });
      nearly(found.film, plain.film, 1e-9);
      near(found.angle, plain.angle, 1e-6);
    };
    same(
      cycle.swing.map((swing) => (swing - 1) / 2),
      bigEnd.meanTurning,
    );
    same(turning, () => turning);
  },
);

test("without load the journal stays in the middle", () => {
  const idle = { ...bigEnd, load: () => ({ x: 0, y: 0 }) };
  expect(leastFilmOverCycle(idle).film).toBe(sizes.radialClearance);
});

test("boundary", () => {
  for (const name of Object.keys(sizes)) refuses(() => leastFilmOverCycle({ ...bigEnd, [name]: 0 }), name);
  refuses(() => leastFilmOverCycle({ ...bigEnd, load: () => ({ x: Number.NaN, y: 0 }) }), "load");
  refuses(() => leastFilmOverCycle({ ...bigEnd, meanTurning: () => Number.NaN }), "meanTurning");
  const sampled = { ...sizes, load: cycle, meanTurning: -0.5 };
  for (const name of Object.keys(sizes)) refuses(() => leastFilmOverSamples({ ...sampled, [name]: 0 }), name);
  const torn = { x: cycle.x, y: cycle.y.with(7, Number.NaN) };
  refuses(() => leastFilmOverSamples({ ...sampled, load: torn }), "load");
  refuses(() => leastFilmOverSamples({ ...sampled, meanTurning: Number.NaN }), "meanTurning");
});
