import { test } from "@fast-check/vitest";
import { expect } from "vitest";
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
import { pressFitHoopStress, pressFitPressure, pressFitTorque } from "./pressFit.ts";

const steel = { elasticModulus: 206 * GPa, poissonRatio: 0.3 };
const fit = {
  interference: 0.025 * mm,
  diameter: 38 * mm,
  outerDiameter: 76 * mm,
  innerBore: 0,
  outer: steel,
  inner: steel,
};

test("example: a steel hub on a solid steel shaft", () => {
  const pressure = pressFitPressure(fit);
  near(pressure / MPa, 50.82, 0.005);
  near(pressFitTorque({ pressure, diameter: 38 * mm, length: 45 * mm, friction: 0.12 }), 622.5, 0.1);
  // One material and a solid shaft leave p = E delta / (2 D) (1 - (D/D_o)^2).
  nearly(pressure, ((206 * GPa * 0.025) / (2 * 38)) * (1 - 0.25), 1e-12);
});

test.prop([between(0.01, 0.2), between(1.05, 4), between(0, 0.9), between(1e-6, 2e-4)])(
  "the bores close to one size: both rings' radial growth makes up the interference",
  (diameter, ratio, hollow, interference) => {
    const one = {
      ...fit,
      diameter,
      outerDiameter: ratio * diameter,
      innerBore: hollow * diameter,
      interference,
    };
    const pressure = pressFitPressure(one);
    const hoop = pressFitHoopStress({ pressure, diameter, outerDiameter: one.outerDiameter });
    // Strain of each ring at the joint from its hoop and radial stress.
    const outer = (hoop + 0.3 * pressure) / steel.elasticModulus;
    const inside = one.innerBore;
    const inner =
      ((-pressure * (diameter ** 2 + inside ** 2)) / (diameter ** 2 - inside ** 2) + 0.3 * pressure) /
      steel.elasticModulus;
    nearly((outer - inner) * diameter, interference, 1e-9);
  },
);

test.prop([between(1.1, 3)])("a thicker hub is pressed harder", (ratio) => {
  const at = (times: number) => pressFitPressure({ ...fit, outerDiameter: times * ratio * fit.diameter });
  expect(at(1.1)).toBeGreaterThan(at(1));
});

test("a thin ring goes over into the thin shell", () => {
  const wall = 1e-5;
  const outerDiameter = fit.diameter + 2 * wall;
  nearly(
    pressFitHoopStress({ pressure: 1, diameter: fit.diameter, outerDiameter }),
    fit.diameter / (2 * wall),
    1e-3,
  );
});

test("boundary and refusals", () => {
  expect(pressFitPressure({ ...fit, interference: 0 })).toBe(0);
  refuses(() => pressFitPressure({ ...fit, interference: -1e-6 }), "interference");
  refuses(() => pressFitPressure({ ...fit, outerDiameter: 38 * mm }), "outerDiameter");
  refuses(() => pressFitPressure({ ...fit, innerBore: 38 * mm }), "innerBore");
  refuses(() => pressFitTorque({ pressure: 1, diameter: 1, length: 1, friction: 1.1 }), "friction");
  refusesNonFinite(pressFitPressure, fit);
});
