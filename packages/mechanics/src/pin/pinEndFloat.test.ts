import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { pinEndFloat } from "./pinEndFloat.ts";

test("example and boundary", () => {
  const input = { retainerSpan: 59.85 * mm, retainerThickness: 1.6 * mm, pinLength: 56.4 * mm };
  near(pinEndFloat(input) / mm, 0.25, 1e-9);
  refuses(() => pinEndFloat({ ...input, retainerThickness: -1 * mm }), "retainerThickness");
  refusesNonFinite(pinEndFloat, input);
});
