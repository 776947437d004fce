import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { coilBindMargin } from "./coilBindMargin.ts";

const spring = { installedHeight: 49.5 * mm, greatestLift: 16.19 * mm, solidHeight: 31 * mm };

test("example", () => {
  near(coilBindMargin(spring) / mm, 2.31, 1e-9);
});

property.prop([between(-0.005, 0.005)])("the valve may lift by the margin more and no farther", (margin) => {
  const solidHeight = 31 * mm;
  const greatestLift = spring.installedHeight - solidHeight - margin;
  near(coilBindMargin({ ...spring, solidHeight, greatestLift }), margin, 1e-15);
  near(
    coilBindMargin({ ...spring, greatestLift: greatestLift + Math.max(0, margin) }),
    Math.min(0, margin),
    1e-15,
  );
});

test("boundary", () => {
  refuses(() => coilBindMargin({ ...spring, solidHeight: 0 }), "solidHeight");
  refuses(() => coilBindMargin({ ...spring, installedHeight: 0 }), "installedHeight");
  refuses(() => coilBindMargin({ ...spring, greatestLift: -1e-9 }), "greatestLift");
  refusesNonFinite(coilBindMargin, spring);
});
