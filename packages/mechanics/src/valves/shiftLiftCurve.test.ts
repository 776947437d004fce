import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { angles, between, deg, nearly, refuses } from "../check/support.test-support.ts";
import { shiftLiftCurve } from "./shiftLiftCurve.ts";
import { standInLiftCurve } from "./standInLiftCurve.ts";
import { exampleLobe, inletCurve } from "./valves.test-support.ts";

test("boundary", () => {
  refuses(() => shiftLiftCurve(inletCurve, Number.NaN), "shift");
  refuses(() => shiftLiftCurve(inletCurve, Number.POSITIVE_INFINITY), "shift");
});

property.prop([angles, between(-10, 10)])(
  "retarded, a curve is the same lobe on a later centre",
  (angle, by) => {
    const later = standInLiftCurve({ ...exampleLobe, centre: exampleLobe.centre + by * deg });
    const shifted = shiftLiftCurve(inletCurve, by * deg).at(angle);
    nearly(shifted.lift + 1, later.at(angle).lift + 1, 1e-12);
  },
);
