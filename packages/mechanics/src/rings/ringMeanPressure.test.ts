import { test } from "vitest";
import { bar, MPa, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { ringLiftPressure, ringMeanPressure } from "./ringMeanPressure.ts";

test("examples and boundary", () => {
  const tension = { tangentialForce: 12, bore: 86.5 * mm, ringHeight: 1.2 * mm };
  near(ringMeanPressure(tension) / MPa, 0.2312, 5e-5);
  const lift = { ringHeight: 1.2 * mm, ringDensity: 7800, acceleration: 41_560 };
  near(ringLiftPressure(lift) / bar, 3.89, 5e-3);
  refuses(() => ringMeanPressure({ ...tension, ringHeight: 0 }), "ringHeight");
  refusesNonFinite(ringMeanPressure, tension);
  refusesNonFinite(ringLiftPressure, lift);
});
