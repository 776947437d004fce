import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, mm, near, nearly, refuses, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { finiteBearing, finiteBearingLoad } from "./finiteBearing.ts";
import { finiteFilm } from "./finiteFilm.ts";
import { petroffPower } from "./petroffPower.ts";
import { shortBearingEccentricity } from "./shortBearing.ts";
import { sommerfeld } from "./sommerfeld.ts";

const bearing = {
  viscosity: 8e-3,
  angularSpeed: 7000 * rpm,
  journalDiameter: 48 * mm,
  length: 20 * mm,
  radialClearance: 0.03 * mm,
};
const { journalDiameter, radialClearance } = bearing;

property.prop([between(0.02, 0.98), between(6e-3, 80e-3)])(
  "load to eccentricity and back; more load, less film and more friction",
  (eccentricity, ofLength) => {
    const one = { ...bearing, length: ofLength };
    const load = finiteBearingLoad({ ...one, eccentricity });
    const running = finiteBearing({ ...one, load });
    near(running.eccentricity, eccentricity, 1e-9);
    const heavier = finiteBearing({ ...one, load: 1.01 * load });
    expect(heavier.film).toBeLessThan(running.film);
    expect(heavier.frictionPower).toBeGreaterThan(running.frictionPower);
    // The short bearing promises more than a finite one holds.
    expect(shortBearingEccentricity({ ...one, load })).toBeLessThan(eccentricity);
  },
);

test("without load it is Petroff's bearing, a quarter turn ahead, and lets nothing out at its sides", () => {
  const idle = finiteBearing({ ...bearing, load: 0 });
  near(idle.eccentricity, 0, 1e-12);
  nearly(idle.frictionPower, petroffPower({ ...bearing, journalRadius: journalDiameter / 2 }));
  nearly(idle.film, radialClearance);
  near(idle.attitude, Math.PI / 2, 0.04);
  expect(idle.peakPressure).toBe(0);
  expect(idle.sideFlow / idle.flow).toBeLessThan(0.02);
});

property.prop([between(0.05, 0.97), between(0.15, 1.9)])(
  "forces, flow and pressure are the variables of the film with their sizes put back",
  (eccentricity, lengthRatio) => {
    const one = { ...bearing, length: lengthRatio * journalDiameter };
    const load = finiteBearingLoad({ ...one, eccentricity });
    const film = finiteFilm({ eccentricity, lengthRatio });
    const unitLoad = load / (journalDiameter * one.length);
    const radius = journalDiameter / 2;
    nearly(sommerfeld({ ...one, unitLoad, journalRadius: radius }), film.sommerfeld, 1e-6);
    const running = finiteBearing({ ...one, load });
    const speed = bearing.angularSpeed * radius;
    nearly(running.frictionPower, film.friction * (radialClearance / radius) * load * speed, 1e-6);
    const turns = bearing.angularSpeed / (2 * Math.PI);
    nearly(running.flow, film.flow * radius * radialClearance * turns * one.length, 1e-6);
    nearly(running.sideFlow, running.flow * film.sideFlowShare, 1e-6);
    nearly(running.peakPressure, unitLoad / film.pressureRatio, 1e-6);
  },
);

test("a load beyond the table still has a film", () => {
  const crushed = finiteBearing({ ...bearing, load: 1e7 });
  expect(crushed.eccentricity).toBeGreaterThan(0.99);
  expect(crushed.film).toBeGreaterThan(0);
});

test("boundary", () => {
  refuses(() => finiteBearing({ ...bearing, load: -1 }), "load");
  refuses(() => finiteBearing({ ...bearing, load: 1, length: 4 * mm }), "lengthRatio");
  refuses(() => finiteBearingLoad({ ...bearing, eccentricity: 1 }), "eccentricity");
  expect(() => finiteBearing({ ...bearing, load: 1, length: Number.NaN })).toThrow(RangeError);
  expect(() => finiteBearing({ ...bearing, load: 1, viscosity: Number.NaN })).toThrow(/viscosity: found NaN/);
  refusesNonFinite((load: number) => finiteBearing({ ...bearing, load }), 1000);
});
