import { test } from "vitest";
import { mm, near, refusesNonFinite } from "../check/support.test-support.ts";
import { stackGrowth } from "./stackGrowth.ts";

const steel = 12e-6;
const parts = {
  block: { size: 234 * mm, expansion: 21.5e-6, temperatureRise: 80 },
  crankThrow: { size: 46 * mm, expansion: steel, temperatureRise: 90 },
  rod: { size: 155 * mm, expansion: steel, temperatureRise: 100 },
  piston: { size: 33 * mm, expansion: 22.3e-6, temperatureRise: 122 },
};

test("an aluminium block outgrows a steel crank and rod", () => {
  // By hand: 0.40248 - (0.04968 + 0.186 + 0.08978) mm.
  near(stackGrowth(parts) / mm, 0.07702, 5e-6);
  refusesNonFinite(stackGrowth, parts);
});
