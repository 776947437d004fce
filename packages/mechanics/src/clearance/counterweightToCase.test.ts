import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { counterweightToCase } from "./counterweightToCase.ts";

test("example and boundary", () => {
  const input = { caseRadius: 80 * mm, counterweightRadius: 74 * mm, mainBearingClearance: 0.06 * mm };
  near(counterweightToCase(input) / mm, 5.97, 1e-9);
  refuses(() => counterweightToCase({ ...input, mainBearingClearance: -0.01 * mm }), "mainBearingClearance");
  refusesNonFinite(counterweightToCase, input);
});
