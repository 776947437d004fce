import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, deg, kN, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { residualClamp } from "../loads/residualClamp.ts";
import {
  boltServiceLoad,
  embeddingLoss,
  loadFactor,
  thermalPreloadChange,
  tighteningAngle,
} from "./joint.ts";

const springs = { boltCompliance: 9.3e-9, clampedCompliance: 2.9e-9 };

test("examples", () => {
  near(loadFactor({ ...springs, introduction: 0.5 }), 0.119, 5e-4);
  near(embeddingLoss({ ...springs, embedding: 8e-6 }) / kN, 0.656, 5e-4);
  const angle = { preload: 46 * kN, boltCompliance: 3.7e-9, clampedCompliance: 0.8e-9, pitch: 1.058 * mm };
  near(tighteningAngle(angle) / deg, 70.43, 0.01);
});

test("an aluminium head grows away from steel studs", () => {
  const head = { size: 150 * mm, expansion: 21.5e-6, temperatureRise: 90 };
  const stud = { size: 150 * mm, expansion: 12e-6, temperatureRise: 70 };
  // By hand: (0.29025 - 0.126) mm / 12.2e-9 m/N.
  near(thermalPreloadChange({ ...springs, clamped: [head], bolt: [stud] }) / kN, 13.463, 5e-4);
  refusesNonFinite(thermalPreloadChange, { ...springs, clamped: [head], bolt: [stud] });
});

test("boundary", () => {
  refuses(() => loadFactor({ ...springs, introduction: 1.1 }), "introduction");
  refuses(() => embeddingLoss({ ...springs, boltCompliance: 0, embedding: 1e-6 }), "boltCompliance");
  refusesNonFinite(loadFactor, { ...springs, introduction: 0.5 });
  refusesNonFinite(embeddingLoss, { ...springs, embedding: 8e-6 });
  refusesNonFinite(tighteningAngle, { ...springs, preload: 1, pitch: 1e-3 });
  refusesNonFinite(boltServiceLoad, { preload: 1, loadFactor: 0.1, externalLoad: 1 });
});

property.prop([between(0, 1), between(0, 4e4)])(
  "bolt and joint share the load between them",
  (factor, load) => {
    const bolt = boltServiceLoad({ preload: 46 * kN, loadFactor: factor, externalLoad: load });
    const clamp = residualClamp({
      preload: 46 * kN,
      bolts: 1,
      loadFactor: factor,
      jointLoad: load,
      pryingFactor: 1,
    });
    near(bolt - clamp, load, 1e-9);
  },
);
