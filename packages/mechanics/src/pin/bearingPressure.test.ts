import { test } from "vitest";
import { MPa, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { bearingPressure } from "./bearingPressure.ts";

test("examples: small end and both bosses", () => {
  const small = { force: 92_849, diameter: 22 * mm, length: 22 * mm };
  near(bearingPressure(small) / MPa, 191.8, 0.06);
  near(bearingPressure({ ...small, length: 2 * 16 * mm }) / MPa, 131.9, 0.06);
  refuses(() => bearingPressure({ ...small, length: 0 }), "length");
  refusesNonFinite(bearingPressure, small);
});
