import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { pistonRock } from "./pistonRock.ts";

test("example and boundary", () => {
  const input = { bore: 86.5 * mm, skirtClearance: 0.06 * mm, skirtLength: 34 * mm };
  near(pistonRock(input) / mm, 0.07632, 5e-6);
  refuses(() => pistonRock({ ...input, skirtClearance: -1 }), "skirtClearance");
  refusesNonFinite(pistonRock, input);
});
