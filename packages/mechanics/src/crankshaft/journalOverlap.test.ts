import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { journalOverlap } from "./journalOverlap.ts";

test("example and boundary", () => {
  const input = { mainDiameter: 57 * mm, crankpinDiameter: 48 * mm, throwRadius: 47 * mm };
  near(journalOverlap(input) / mm, 5.5, 1e-9);
  refuses(() => journalOverlap({ ...input, throwRadius: 0 }), "throwRadius");
  refusesNonFinite(journalOverlap, input);
});
