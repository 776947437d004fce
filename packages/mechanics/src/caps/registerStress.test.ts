import { expect, test } from "vitest";
import { GPa, MPa, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { registerStress } from "./registerStress.ts";

test("example and boundary; a loose register presses nothing", () => {
  const input = { elasticModulus: 206 * GPa, interference: 0.045 * mm, width: 110 * mm };
  near(registerStress(input) / MPa, 84.27, 5e-3);
  expect(registerStress({ ...input, interference: -0.02 * mm })).toBe(0);
  refuses(() => registerStress({ ...input, width: 0 }), "width");
  refusesNonFinite(registerStress, input);
});
