import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, kN, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { preloadRange } from "./preloadRange.ts";

test("example and boundary", () => {
  const { least, greatest } = preloadRange({ preload: 66 * kN, factor: 1.6 });
  near(least / kN, 50.77, 5e-3);
  near(greatest / kN, 81.23, 5e-3);
  refuses(() => preloadRange({ preload: 1, factor: 0.99 }), "factor");
  refusesNonFinite(preloadRange, { preload: 1, factor: 1.6 });
});

property.prop([between(1, 4)])("the range is centred and as wide as its factor", (factor) => {
  const { least, greatest } = preloadRange({ preload: 66 * kN, factor });
  nearly((least + greatest) / 2, 66 * kN);
  nearly(greatest / least, factor);
});
