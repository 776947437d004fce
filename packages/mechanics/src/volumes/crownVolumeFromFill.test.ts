import { test } from "vitest";
import { cm3, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { crownVolumeFromFill } from "./crownVolumeFromFill.ts";

test("example and boundary", () => {
  const input = { fillVolume: 75.57 * cm3, bore: 86.5 * mm, depthBelowDeck: 10 * mm, topLandVolume: 0 };
  near(crownVolumeFromFill(input) / cm3, 16.8, 0.05);
  refuses(() => crownVolumeFromFill({ ...input, depthBelowDeck: -1 * mm }), "depthBelowDeck");
  refusesNonFinite(crownVolumeFromFill, input);
});
