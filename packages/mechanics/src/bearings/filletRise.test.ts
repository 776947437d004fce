import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { filletRise, shellToFilletClearance } from "./filletRise.ts";

const edge = { filletRadius: 2.5 * mm, axialDistance: 1 * mm };

test("examples", () => {
  near(filletRise(edge) / mm, 0.5, 1e-9);
  near(
    shellToFilletClearance({ ...edge, bearingClearance: 0.056 * mm, chamferDepth: 0.6 * mm }) / mm,
    0.128,
    1e-9,
  );
  expect(filletRise({ ...edge, axialDistance: 2.5 * mm })).toBe(0);
  nearly(filletRise({ ...edge, axialDistance: 0 }), 2.5 * mm);
});

test("boundary", () => {
  refuses(() => filletRise({ ...edge, axialDistance: -0.1 * mm }), "axialDistance");
  refusesNonFinite(filletRise, edge);
  refusesNonFinite(shellToFilletClearance, { ...edge, bearingClearance: 0.056 * mm, chamferDepth: 0.6 * mm });
});

property.prop([between(0, 3e-3)])("the point lies on the fillet's circle", (axialDistance) => {
  const rise = filletRise({ ...edge, axialDistance });
  const toCentre = Math.max(0, edge.filletRadius - axialDistance);
  nearly(Math.hypot(toCentre, edge.filletRadius - rise), edge.filletRadius);
});
