import { test } from "vitest";
import { near, refusesNonFinite } from "../check/support.test-support.ts";
import { housingExpansion } from "./housingExpansion.ts";

test("example and boundary", () => {
  near(housingExpansion({ block: 21.5e-6, cap: 12e-6 }), 16.75e-6, 1e-15);
  refusesNonFinite(housingExpansion, { block: 21.5e-6, cap: 12e-6 });
});
