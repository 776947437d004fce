import { test } from "vitest";
import { GPa, kN, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { boltCompliance, boltStretch, preloadFromStretch } from "./boltStretch.ts";
import { threadGeometry } from "./threadGeometry.ts";

const shank = { length: 30 * mm, area: 50.3e-6, elasticModulus: 206 * GPa };

test("a bar stretches by F l / (E A), and lengths add up", () => {
  nearly(boltStretch({ preload: 46 * kN, segments: [shank] }), (46e3 * 30e-3) / (206e9 * 50.3e-6));
  const halves = [shank, shank].map((segment) => ({ ...segment, length: 15 * mm }));
  nearly(boltCompliance(halves), boltCompliance([shank]));
  const { stressArea } = threadGeometry({ majorDiameter: 9.525 * mm, pitch: 1.0583 * mm });
  const thread = { length: 9.76 * mm, area: stressArea, elasticModulus: 206 * GPa };
  near(boltStretch({ preload: 46 * kN, segments: [shank, thread] }) / mm, 0.1713, 5e-5);
});

test("a stretch gives back the preload that made it", () => {
  const stretch = boltStretch({ preload: 46 * kN, segments: [shank] });
  nearly(preloadFromStretch({ stretch, segments: [shank] }), 46 * kN);
  refuses(() => preloadFromStretch({ stretch: -1e-6, segments: [shank] }), "stretch");
  refusesNonFinite(preloadFromStretch, { stretch, segments: [shank] });
});

test("boundary", () => {
  refuses(() => boltCompliance([]), "segments");
  refuses(() => boltStretch({ preload: -1, segments: [shank] }), "preload");
  refusesNonFinite(boltStretch, { preload: 1, segments: [shank] });
  refusesNonFinite(boltCompliance, [shank]);
});
