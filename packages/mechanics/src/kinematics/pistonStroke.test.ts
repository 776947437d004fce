import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  centredCrank,
  cranks,
  mm,
  near,
  nearly,
  offsetCrank,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { pistonStroke } from "./pistonStroke.ts";

test("examples: an offset lengthens the stroke", () => {
  nearly(pistonStroke(centredCrank), 94 * mm);
  near(pistonStroke(offsetCrank) / mm, 94.0006293, 5e-8);
  near(pistonStroke({ ...centredCrank, pinLineOffset: 10 * mm }) / mm, 94.2529015, 5e-8);
  refusesNonFinite(pistonStroke, offsetCrank);
});

property.prop([cranks])("the stroke is never shorter than twice the throw", (crank) => {
  expect(pistonStroke(crank)).toBeGreaterThanOrEqual(2 * crank.throwRadius * (1 - 1e-12));
});
