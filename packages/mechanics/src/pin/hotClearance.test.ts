import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { hotClearance, hotClearanceFromCold } from "./hotClearance.ts";

const skirt = {
  bore: { size: 86.5 * mm, expansion: 11e-6, temperatureRise: 85 },
  shaft: { size: 86.41 * mm, expansion: 22.3e-6, temperatureRise: 102 },
};
const titaniumRod = {
  coldClearance: 0.012 * mm,
  diameter: 20 * mm,
  outerExpansion: 8.9e-6,
  innerExpansion: 12e-6,
  temperatureRise: 90,
};

test("examples", () => {
  near(hotClearance(skirt) / mm, -0.02567, 5e-6);
  const boss = {
    ...titaniumRod,
    coldClearance: 0.018 * mm,
    diameter: 22 * mm,
    outerExpansion: 22.3e-6,
    temperatureRise: 130,
  };
  near(hotClearanceFromCold(boss) / mm, 0.04746, 5e-6);
  near(hotClearanceFromCold(titaniumRod) / mm, 0.00642, 5e-6);
  refuses(() => hotClearanceFromCold({ ...titaniumRod, diameter: 0 }), "diameter");
  refusesNonFinite(hotClearance, skirt);
  refusesNonFinite(hotClearanceFromCold, titaniumRod);
});

property.prop([between(0, 200), between(0, 1e-4)])("both forms agree to second order", (rise, cold) => {
  const bore = { size: 22 * mm + cold, expansion: 22e-6, temperatureRise: rise };
  const shaft = { size: 22 * mm, expansion: 12e-6, temperatureRise: rise };
  const short = {
    coldClearance: cold,
    diameter: 22 * mm,
    outerExpansion: 22e-6,
    innerExpansion: 12e-6,
    temperatureRise: rise,
  };
  near(hotClearance({ bore, shaft }), hotClearanceFromCold(short), cold * 22e-6 * 200 + 1e-15);
});
