import { test } from "vitest";
import { near, refuses, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { residualUnbalance } from "./residualUnbalance.ts";

test("example and boundary", () => {
  const input = { grade: 6.3e-3, rotorMass: 24, angularSpeed: 7600 * rpm };
  near(residualUnbalance(input) * 1e6, 190, 0.5);
  refuses(() => residualUnbalance({ ...input, angularSpeed: 0 }), "angularSpeed");
  refusesNonFinite(residualUnbalance, input);
});
