import { test } from "vitest";
import { cm3, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { topLandVolume } from "./topLandVolume.ts";

test("example and boundary", () => {
  const input = { bore: 86.5 * mm, topLandDiameter: 85.85 * mm, topLandHeight: 7 * mm };
  near(topLandVolume(input) / cm3, 0.6159, 5e-5);
  refuses(() => topLandVolume({ ...input, topLandDiameter: 86.5 * mm }), "topLandDiameter");
  refusesNonFinite(topLandVolume, input);
});
