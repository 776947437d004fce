import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { filletRise, shellToFilletClearance } from "./filletRise.ts";

const edge = { filletRadius: 2.5 * mm, axialDistance: 1 * mm };

test("examples", () => {
  near(filletRise(edge) / mm, 0.5, 1e-9);
  // A narrow chamfer: the edge rules, as in 0.028 + 0.6 - 0.5; of a wide one the inner end does.
  const shell = { ...edge, bearingClearance: 0.056 * mm, chamferDepth: 0.6 * mm };
  near(shellToFilletClearance({ ...shell, chamferWidth: 1.4 * mm }) / mm, 0.026, 5e-4);
  near(shellToFilletClearance({ ...shell, chamferWidth: 1.5 * mm }) / mm, 0.028, 1e-9);
  near(
    shellToFilletClearance({ ...shell, chamferDepth: 0.5 * mm, chamferWidth: 1.5 * mm }) / mm,
    0.028,
    1e-9,
  );
  near(
    shellToFilletClearance({ ...shell, chamferDepth: 0.4 * mm, chamferWidth: 1.5 * mm }) / mm,
    -0.072,
    1e-9,
  );
  near(shellToFilletClearance({ ...shell, chamferWidth: 0.6 * mm }) / mm, -0.1396, 5e-5);
  expect(filletRise({ ...edge, axialDistance: 2.5 * mm })).toBe(0);
  nearly(filletRise({ ...edge, axialDistance: 0 }), 2.5 * mm);
});

test("boundary", () => {
  refuses(() => filletRise({ ...edge, axialDistance: -0.1 * mm }), "axialDistance");
  refusesNonFinite(filletRise, edge);
  refusesNonFinite(shellToFilletClearance, {
    ...edge,
    bearingClearance: 0.056 * mm,
    chamferDepth: 0.6 * mm,
    chamferWidth: 0.6 * mm,
  });
});

property.prop([between(0, 3e-3)])("the point lies on the fillet's circle", (axialDistance) => {
  const rise = filletRise({ ...edge, axialDistance });
  const toCentre = Math.max(0, edge.filletRadius - axialDistance);
  nearly(Math.hypot(toCentre, edge.filletRadius - rise), edge.filletRadius);
});

property.prop([between(0.5e-3, 4e-3), between(0, 4e-3), between(0, 2e-3), between(1e-5, 2e-3)])(
  "no point of the chamfer comes nearer, walked from end to end",
  (filletRadius, axialDistance, chamferDepth, chamferWidth) => {
    const bearingClearance = 0.05 * mm;
    let least = Number.POSITIVE_INFINITY;
    for (let step = 0; step <= 200; step++) {
      const share = step / 200;
      const rise = filletRise({ filletRadius, axialDistance: axialDistance + share * chamferWidth });
      least = Math.min(least, bearingClearance / 2 + (1 - share) * chamferDepth - rise);
    }
    const input = { filletRadius, axialDistance, bearingClearance, chamferDepth, chamferWidth };
    near(shellToFilletClearance(input), least, 1e-12);
  },
);
