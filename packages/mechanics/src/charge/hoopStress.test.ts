import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { bar, between, MPa, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { hoopStress, thickCylinderHoopStress } from "./hoopStress.ts";

const wall = { pressure: 158 * bar, bore: 86.5 * mm, wall: 4.1 * mm };

test("example and boundary", () => {
  near(hoopStress(wall) / MPa, 166.7, 0.06);
  refuses(() => hoopStress({ ...wall, wall: 0 }), "wall");
  refusesNonFinite(hoopStress, wall);
  refusesNonFinite(thickCylinderHoopStress, wall);
});

property.prop([between(1, 40)])("thick is above thin, and both meet for a thin wall", (thickness) => {
  const here = { ...wall, wall: thickness * mm };
  expect(thickCylinderHoopStress(here)).toBeGreaterThan(hoopStress(here));
  const thin = { ...wall, wall: thickness * 1e-3 * mm };
  expect(thickCylinderHoopStress(thin) / hoopStress(thin)).toBeLessThan(1.001);
});
