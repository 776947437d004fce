import { test } from "vitest";
import { cm3, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { gasketVolume } from "./gasketVolume.ts";

test("example and boundary", () => {
  const input = { gasketBore: 87.5 * mm, compressedThickness: 1 * mm };
  near(gasketVolume(input) / cm3, 6.0132, 5e-5);
  refuses(() => gasketVolume({ ...input, compressedThickness: 0 }), "compressedThickness");
  refusesNonFinite(gasketVolume, input);
});
