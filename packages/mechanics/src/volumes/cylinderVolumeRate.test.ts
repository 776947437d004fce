import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { angles, cm3, cranks, mm, near, offsetCrank, refuses } from "../check/support.test-support.ts";
import { topDeadCentre } from "../kinematics/deadCentres.ts";
import { cylinderVolumeAt } from "./cylinderVolumeAt.ts";
import { cylinderVolumeRate } from "./cylinderVolumeRate.ts";

const bore = 86.5 * mm;

test("still at top dead centre, growing after it", () => {
  const { angle } = topDeadCentre(offsetCrank);
  near(cylinderVolumeRate({ crank: offsetCrank, bore, angle }), 0, 1e-15);
  expect(cylinderVolumeRate({ crank: offsetCrank, bore, angle: 1 })).toBeGreaterThan(0);
  expect(cylinderVolumeRate({ crank: offsetCrank, bore, angle: -1 })).toBeLessThan(0);
  refuses(() => cylinderVolumeRate({ crank: offsetCrank, bore: 0, angle: 0 }), "bore");
});

property.prop([cranks, angles])("is the slope of the cylinder volume", (crank, angle) => {
  const at = (where: number) => cylinderVolumeAt({ crank, bore, clearanceVolume: 50 * cm3, angle: where });
  const d = 1e-5;
  near(cylinderVolumeRate({ crank, bore, angle }), (at(angle + d) - at(angle - d)) / (2 * d), 1e-11);
});
