import { expect, test } from "vitest";
import { mm, offsetCrank, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { requireSliderCrank } from "./SliderCrank.ts";

test("a mechanism that can turn is accepted, one that cannot is not", () => {
  refusesNonFinite(requireSliderCrank, offsetCrank);
  refuses(() => requireSliderCrank({ ...offsetCrank, throwRadius: 0 }), "throwRadius");
  const limit = { throwRadius: 47 * mm, rodLength: 48 * mm, pinLineOffset: 1.001 * mm };
  refuses(() => requireSliderCrank(limit), "rodLength");
  refuses(() => requireSliderCrank({ ...limit, pinLineOffset: -1.001 * mm }), "rodLength");
  expect(() => requireSliderCrank({ ...limit, pinLineOffset: 0.999 * mm })).not.toThrow();
});
