import { test } from "vitest";
import { bar, kN, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { gasForce } from "./gasForce.ts";

test("example and boundary; the case pressure pushes back", () => {
  const input = { cylinderPressure: 158 * bar, casePressure: 0, bore: 86.5 * mm };
  near(gasForce(input) / kN, 92.849, 1e-3);
  near(gasForce({ ...input, cylinderPressure: 0.5 * bar, casePressure: 1 * bar }), -293.83, 0.01);
  refuses(() => gasForce({ ...input, cylinderPressure: -1 }), "cylinderPressure");
  refusesNonFinite(gasForce, input);
});
