import { test } from "vitest";
import { MPa, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { fatigueReserve } from "./fatigueReserve.ts";

test("example and boundary", () => {
  const input = { allowableAmplitude: 380 * MPa, compressiveStress: 387 * MPa, tensileStress: 121 * MPa };
  near(fatigueReserve(input), 1.496, 5e-4);
  refuses(
    () => fatigueReserve({ ...input, compressiveStress: 0, tensileStress: 0 }),
    "compressiveStress + tensileStress",
  );
  refusesNonFinite(fatigueReserve, input);
});
