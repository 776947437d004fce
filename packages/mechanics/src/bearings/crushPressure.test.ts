import { test } from "vitest";
import { GPa, MPa, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { crushPressure, crushStress } from "./crushPressure.ts";

test("examples and boundary", () => {
  const input = { crush: 0.045 * mm, housingBore: 51 * mm, elasticModulus: 206 * GPa };
  near(crushStress(input) / MPa, 115.7, 0.06);
  near(crushPressure({ ...input, shellWall: 1.472 * mm }) / MPa, 6.68, 5e-3);
  refuses(() => crushStress({ ...input, crush: -1 * mm }), "crush");
  refusesNonFinite(crushStress, input);
  refusesNonFinite(crushPressure, { ...input, shellWall: 1.472 * mm });
});
