import { test } from "vitest";
import { kN, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { flangeTorque } from "./flangeTorque.ts";

test("example and boundary", () => {
  const input = { bolts: 8, preload: 60 * kN, friction: 0.15, boltCircleRadius: 33 * mm };
  near(flangeTorque(input), 2376, 0.5);
  refuses(() => flangeTorque({ ...input, friction: -0.1 }), "friction");
  refusesNonFinite(flangeTorque, input);
});
