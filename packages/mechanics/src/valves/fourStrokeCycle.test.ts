import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near } from "../check/support.test-support.ts";
import { fourStrokeCycle, withinCycle } from "./fourStrokeCycle.ts";

test("examples", () => {
  near(withinCycle(-1, 0), fourStrokeCycle - 1, 1e-15);
  expect(withinCycle(fourStrokeCycle, 0)).toBe(0);
  expect(withinCycle(-Number.MIN_VALUE, 0)).toBe(0);
});

property.prop([between(-100, 100), between(-20, 20)])("same position, within one cycle", (angle, from) => {
  const found = withinCycle(angle, from);
  expect(found).toBeGreaterThanOrEqual(from);
  expect(found).toBeLessThan(from + fourStrokeCycle + 1e-13);
  near(Math.sin((found - angle) / 4), 0, 1e-12);
});
