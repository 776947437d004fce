import { test } from "@fast-check/vitest";
import {
  between,
  kN,
  MPa,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { eyeStress } from "./eyeStress.ts";

const eye = { force: 22 * kN, outerDiameter: 33 * mm, boreDiameter: 25 * mm, width: 22 * mm };

test("example", () => near(eyeStress(eye) / MPa, 125, 1e-9));
test.prop([between(1.1, 4)])("twice the wall, half the stress", (times) =>
  nearly(eyeStress({ ...eye, outerDiameter: eye.boreDiameter + times * 8 * mm }), eyeStress(eye) / times),
);
test("refusals", () => {
  refuses(() => eyeStress({ ...eye, outerDiameter: 25 * mm }), "outerDiameter");
  refusesNonFinite(eyeStress, eye);
});
