import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { sideClearance } from "./sideClearance.ts";

test("example and boundary", () => {
  const input = { crankpinLength: 48.1 * mm, rods: 2, rodWidth: 23.85 * mm };
  near(sideClearance(input) / mm, 0.4, 1e-9);
  refuses(() => sideClearance({ ...input, rods: 1.5 }), "rods");
  refusesNonFinite(sideClearance, input);
});
