import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, MPa, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { springShearStress } from "./springShearStress.ts";

const spring = { force: 1300, wireDiameter: 5.4 * mm, meanDiameter: 31 * mm };

test("example", () => {
  near(springShearStress(spring) / MPa, 824.6, 0.05);
});

property.prop([between(2, 20)])("more than torsion alone, and that alone for a wide coil", (index) => {
  const meanDiameter = index * spring.wireDiameter;
  const torsion = (16 * (spring.force * meanDiameter)) / 2 / (Math.PI * spring.wireDiameter ** 3);
  const raised = springShearStress({ ...spring, meanDiameter }) / torsion;
  expect(raised).toBeGreaterThan(1);
  const wider = springShearStress({ ...spring, meanDiameter: 1000 * meanDiameter }) / (1000 * torsion);
  expect(wider).toBeLessThan(raised);
  near(wider, 1, 1e-3);
});

test("boundary", () => {
  refuses(() => springShearStress({ ...spring, meanDiameter: 5.4 * mm }), "meanDiameter");
  refuses(() => springShearStress({ ...spring, force: -1 }), "force");
  refuses(() => springShearStress({ ...spring, wireDiameter: 0 }), "wireDiameter");
  refusesNonFinite(springShearStress, spring);
});
