import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  between,
  centredCrank,
  cranks,
  deg,
  mm,
  near,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { dwellAtTopDeadCentre } from "./dwellAtTopDeadCentre.ts";

test("example and boundary", () => {
  near(dwellAtTopDeadCentre(centredCrank, 0.5 * mm) / deg, 14.536, 5e-4);
  refuses(() => dwellAtTopDeadCentre(centredCrank, -1 * mm), "travel");
  refuses(() => dwellAtTopDeadCentre(centredCrank, 94.001 * mm), "height");
  refusesNonFinite(dwellAtTopDeadCentre, centredCrank, 1 * mm);
});

property.prop([cranks, between(0.01, 0.9)])("a longer distance takes a longer dwell", (crank, part) => {
  const travel = part * 2 * crank.throwRadius;
  expect(dwellAtTopDeadCentre(crank, travel)).toBeGreaterThan(dwellAtTopDeadCentre(crank, 0.9 * travel));
});
