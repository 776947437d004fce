import { test } from "vitest";
import { MPa, mm, near, refuses, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { sommerfeld } from "./sommerfeld.ts";

test("example and boundary", () => {
  const input = {
    viscosity: 8e-3,
    angularSpeed: 7000 * rpm,
    unitLoad: 10.49 * MPa,
    journalRadius: 24 * mm,
    radialClearance: 0.03 * mm,
  };
  near(sommerfeld(input), 0.05695, 1e-5);
  refuses(() => sommerfeld({ ...input, radialClearance: 0 }), "radialClearance");
  refusesNonFinite(sommerfeld, input);
});
