import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, cm3, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { clearanceVolumeForRatio } from "./clearanceVolume.ts";
import { compressionRatio } from "./compressionRatio.ts";

test("example and boundary", () => {
  const input = { sweptVolume: 552.399 * cm3, clearanceVolume: 69.0206 * cm3 };
  near(compressionRatio(input), 9.0034, 5e-5);
  refuses(() => compressionRatio({ ...input, clearanceVolume: 0 }), "clearanceVolume");
  refusesNonFinite(compressionRatio, input);
});

property.prop([between(1.01, 40), between(1e-5, 5e-3)])("undoes clearanceVolumeForRatio", (ratio, swept) => {
  const clearance = clearanceVolumeForRatio({ sweptVolume: swept, compressionRatio: ratio });
  nearly(compressionRatio({ sweptVolume: swept, clearanceVolume: clearance }), ratio);
});
