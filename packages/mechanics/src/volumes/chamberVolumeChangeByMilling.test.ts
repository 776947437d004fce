import { test } from "vitest";
import { cm3, mm, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { chamberVolumeChangeByMilling } from "./chamberVolumeChangeByMilling.ts";

test("example and boundary", () => {
  const input = { faceArea: 47e-4, milledDepth: 0.2 * mm };
  nearly(chamberVolumeChangeByMilling(input), -0.94 * cm3);
  refuses(() => chamberVolumeChangeByMilling({ ...input, milledDepth: -0.1 * mm }), "milledDepth");
  refusesNonFinite(chamberVolumeChangeByMilling, input);
});
