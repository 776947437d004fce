import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { petroffPower } from "./petroffPower.ts";

test("example and boundary", () => {
  const input = {
    viscosity: 8.25e-3,
    angularSpeed: 7800 * rpm,
    journalRadius: 24 * mm,
    length: 17.6 * mm,
    radialClearance: 0.032 * mm,
  };
  near(petroffPower(input), 263, 0.5);
  refuses(() => petroffPower({ ...input, length: 0 }), "length");
  refusesNonFinite(petroffPower, input);
});
