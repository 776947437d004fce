import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  between,
  deg,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import {
  shortBearingAttitude,
  shortBearingEccentricity,
  shortBearingLoad,
  shortBearingLoadOver,
  shortBearingSommerfeld,
} from "./shortBearing.ts";
import { sommerfeld } from "./sommerfeld.ts";

const bearing = {
  viscosity: 8e-3,
  angularSpeed: 7000 * rpm,
  journalDiameter: 48 * mm,
  length: 20 * mm,
  radialClearance: 0.03 * mm,
};

test("example: 10 069 N at an eccentricity of 0.83", () => {
  near(shortBearingLoad({ ...bearing, eccentricity: 0.83 }), 10_069, 1);
  near(shortBearingEccentricity({ ...bearing, load: 10_069 }), 0.83, 1e-5);
});

test("an unloaded journal runs centred, a quarter turn from the load", () => {
  near(shortBearingEccentricity({ ...bearing, load: 0 }), 0, 1e-12);
  nearly(shortBearingAttitude(0), 90 * deg);
});

test("boundary", () => {
  refuses(() => shortBearingLoad({ ...bearing, eccentricity: 1 }), "eccentricity");
  refuses(() => shortBearingEccentricity({ ...bearing, load: -1 }), "load");
  refuses(() => shortBearingAttitude(1), "eccentricity");
  refuses(() => shortBearingSommerfeld({ eccentricity: 0, lengthRatio: 0.4 }), "eccentricity");
  refusesNonFinite(shortBearingSommerfeld, { eccentricity: 0.5, lengthRatio: 0.4 });
  refusesNonFinite(shortBearingLoad, { ...bearing, eccentricity: 0.5 });
  refusesNonFinite(shortBearingEccentricity, { ...bearing, load: 1000 });
  refusesNonFinite((eccentricity: number) => shortBearingAttitude(eccentricity), 0.5);
});

property.prop([between(0.01, 0.98)])(
  "load to eccentricity and back; more load, more eccentricity",
  (eccentricity) => {
    const load = shortBearingLoad({ ...bearing, eccentricity });
    expect(shortBearingLoadOver(bearing)(eccentricity)).toBe(load);
    near(shortBearingEccentricity({ ...bearing, load }), eccentricity, 1e-9);
    expect(shortBearingEccentricity({ ...bearing, load: 1.01 * load })).toBeGreaterThan(eccentricity);
  },
);

property.prop([between(0.01, 0.98)])("the load is Ocvirk's in Sommerfeld form too", (e) => {
  const load = shortBearingLoad({ ...bearing, eccentricity: e });
  const { journalDiameter, length } = bearing;
  const s = sommerfeld({
    ...bearing,
    unitLoad: load / (journalDiameter * length),
    journalRadius: journalDiameter / 2,
  });
  nearly(s, shortBearingSommerfeld({ eccentricity: e, lengthRatio: length / journalDiameter }));
});
