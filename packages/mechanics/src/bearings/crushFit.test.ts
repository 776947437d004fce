import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  between,
  GPa,
  MPa,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { crushFitPressure, crushInterference, hotInterferenceChange, housingGrowth } from "./crushFit.ts";
import { crushPressure } from "./crushPressure.ts";

const steel = { elasticModulus: 206 * GPa, poissonRatio: 0.29 };
const fit = {
  crush: 0.045 * mm,
  housingBore: 51 * mm,
  housingOuterDiameter: 66 * mm,
  shellWall: 1.472 * mm,
  housing: steel,
  shell: steel,
};
const cold = { ...fit, interferenceChange: 0 };

test("two shells, 0.045 mm proud each, are 0.0286 mm too large in diameter", () => {
  near(crushInterference(fit.crush) / mm, 0.02865, 5e-6);
});

test("a housing that gives way holds with less than the rigid one's 6.68 MPa", () => {
  const pressure = crushFitPressure(cold);
  expect(pressure).toBeLessThan(6.68 * MPa);
  near(pressure / MPa, 5.56, 5e-3);
});

test("round a rigid housing and a thin shell it is the thin ring's pressure", () => {
  const thin = { ...fit, shellWall: 0.05 * mm };
  const rigid = { elasticModulus: 1e9 * GPa, poissonRatio: 0.29 };
  nearly(
    crushFitPressure({ ...thin, housing: rigid, interferenceChange: 0 }),
    crushPressure({ ...thin, elasticModulus: steel.elasticModulus }),
    2e-3,
  );
});

property.prop([between(0.01e-3, 0.1e-3), between(1.05, 3), between(60e9, 210e9)])(
  "growth of the housing and squeeze of the shells add up to the interference",
  (crush, ratio, elasticModulus) => {
    const housing = { elasticModulus, poissonRatio: 0.3 };
    const input = { ...fit, crush, housing, housingOuterDiameter: ratio * fit.housingBore };
    const pressure = crushFitPressure({ ...input, interferenceChange: 0 });
    const grown = housingGrowth({ ...input, pressure });
    // Squeeze of a thick ring under outside pressure, from Lamé's displacement at its outer face.
    const [outer, inner] = [fit.housingBore / 2, fit.housingBore / 2 - fit.shellWall];
    const b = (-pressure * outer ** 2) / (outer ** 2 - inner ** 2);
    const inwards =
      ((1 - steel.poissonRatio) * b * outer + (1 + steel.poissonRatio) * b * (inner ** 2 / outer)) /
      steel.elasticModulus;
    nearly(grown - 2 * inwards, crushInterference(crush), 1e-9);
  },
);

test("an aluminium housing at 95 degrees lets go of what it held cold", () => {
  const change = hotInterferenceChange({
    housingBore: 70 * mm,
    shellExpansion: 12e-6,
    shellRise: 90,
    housingExpansion: 21.5e-6,
    housingRise: 75,
  });
  near(change / mm, 70 * (12e-6 * 90 - 21.5e-6 * 75), 1e-12);
  const input = { ...fit, crush: 0.05 * mm, housingBore: 70 * mm, housingOuterDiameter: 100 * mm };
  expect(crushFitPressure({ ...input, interferenceChange: change })).toBe(0);
  expect(crushFitPressure({ ...input, interferenceChange: 0 })).toBeGreaterThan(3 * MPa);
});

test("boundary", () => {
  refuses(() => crushInterference(-1), "crush");
  refuses(() => crushFitPressure({ ...cold, housingOuterDiameter: 51 * mm }), "outerDiameter");
  refuses(() => crushFitPressure({ ...cold, shellWall: 26 * mm }), "innerBore");
  const grown = { pressure: 5 * MPa, housingBore: 51 * mm, housingOuterDiameter: 66 * mm, housing: steel };
  refuses(() => housingGrowth({ ...grown, pressure: -1 }), "pressure");
  refuses(() => housingGrowth({ ...grown, housingOuterDiameter: 50 * mm }), "housingOuterDiameter");
  refusesNonFinite(housingGrowth, grown);
  for (const name of ["crush", "housingBore", "shellWall", "interferenceChange"])
    expect(() => crushFitPressure({ ...cold, [name]: Number.NaN })).toThrow(RangeError);
});
