import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { bearingClearance, hotBearingClearance } from "./bearingClearance.ts";

const cold = { housingBore: 51 * mm, shellWall: 1.472 * mm, journalDiameter: 48 * mm };
const hot = {
  housing: { size: 70 * mm, expansion: 16.75e-6, temperatureRise: 80 },
  shellWall: { size: 2.47 * mm, expansion: 12e-6, temperatureRise: 80 },
  journal: { size: 65 * mm, expansion: 12e-6, temperatureRise: 90 },
};

test("examples and boundary", () => {
  near(bearingClearance(cold) / mm, 0.056, 1e-9);
  near(hotBearingClearance(hot) / mm, 0.07886, 5e-6);
  refuses(() => bearingClearance({ ...cold, shellWall: 0 }), "shellWall");
  refusesNonFinite(bearingClearance, cold);
  refusesNonFinite(hotBearingClearance, hot);
});
