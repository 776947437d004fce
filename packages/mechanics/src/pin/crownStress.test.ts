import { test } from "@fast-check/vitest";
import { bar, between, MPa, mm, near, nearly, refusesNonFinite } from "../check/support.test-support.ts";
import { crownStress } from "./crownStress.ts";

const crown = { pressure: 158 * bar, innerRadius: 22 * mm, thickness: 7.6 * mm };

test("example", () => near(crownStress(crown) / MPa, 132.4, 0.05));
test.prop([between(1.1, 4)])("a plate: stress falls with the square of the thickness", (times) => {
  nearly(crownStress({ ...crown, thickness: times * crown.thickness }), crownStress(crown) / times ** 2);
  nearly(crownStress({ ...crown, pressure: times * crown.pressure }), times * crownStress(crown));
});
test("refusals", () => refusesNonFinite(crownStress, crown));
