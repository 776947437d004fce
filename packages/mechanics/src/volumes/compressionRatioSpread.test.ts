import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, cm3, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { compressionRatio } from "./compressionRatio.ts";
import { compressionRatioSpread } from "./compressionRatioSpread.ts";

const engine = { sweptVolume: 552.4 * cm3, clearanceVolume: 69.02 * cm3, chamberSpread: 0.5 * cm3 };

test("example and boundary", () => {
  near(compressionRatioSpread(engine), 0.058, 5e-5);
  expect(compressionRatioSpread({ ...engine, chamberSpread: 0 })).toBe(0);
  refuses(() => compressionRatioSpread({ ...engine, chamberSpread: 139 * cm3 }), "chamberSpread");
  refusesNonFinite(compressionRatioSpread, engine);
});

property.prop([between(0, 20 * cm3)])("is the difference of the two compression ratios", (chamberSpread) => {
  const ratio = (side: 1 | -1) =>
    compressionRatio({
      sweptVolume: engine.sweptVolume,
      clearanceVolume: engine.clearanceVolume + (side * chamberSpread) / 2,
    });
  nearly(compressionRatioSpread({ ...engine, chamberSpread }) + 1, ratio(-1) - ratio(1) + 1);
});
