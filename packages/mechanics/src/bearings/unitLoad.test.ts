import { test } from "vitest";
import { MPa, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { unitLoad } from "./unitLoad.ts";

test("example and boundary", () => {
  const input = { force: 92_849, journalDiameter: 48 * mm, shellLength: 17.6 * mm };
  near(unitLoad(input) / MPa, 109.9, 0.06);
  refuses(() => unitLoad({ ...input, shellLength: 0 }), "shellLength");
  refusesNonFinite(unitLoad, input);
});
