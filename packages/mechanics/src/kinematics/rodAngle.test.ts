import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  angles,
  cranks,
  deg,
  near,
  nearly,
  offsetCrank,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { largestRodAngle, rodAngle } from "./rodAngle.ts";

test("examples", () => {
  near(rodAngle(offsetCrank, 60 * deg) / deg, 16.5674, 5e-5);
  near(largestRodAngle(offsetCrank) / deg, 19.191, 5e-4);
  refusesNonFinite(rodAngle, offsetCrank, 1);
  refusesNonFinite(largestRodAngle, offsetCrank);
});

property.prop([cranks, angles])(
  "no angle exceeds the largest, and a quarter turn reaches it",
  (crank, angle) => {
    const largest = largestRodAngle(crank);
    expect(Math.abs(rodAngle(crank, angle))).toBeLessThanOrEqual(largest * (1 + 1e-12));
    const there = Math.max(Math.abs(rodAngle(crank, 90 * deg)), Math.abs(rodAngle(crank, -90 * deg)));
    nearly(there, largest);
  },
);
