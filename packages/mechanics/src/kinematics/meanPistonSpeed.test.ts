import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { meanPistonSpeed } from "./meanPistonSpeed.ts";

test("example and boundary", () => {
  near(meanPistonSpeed({ stroke: 94 * mm, angularSpeed: 7800 * rpm }), 24.44, 5e-3);
  refuses(() => meanPistonSpeed({ stroke: 94 * mm, angularSpeed: -1 }), "angularSpeed");
  refusesNonFinite(meanPistonSpeed, { stroke: 94 * mm, angularSpeed: 100 });
});
