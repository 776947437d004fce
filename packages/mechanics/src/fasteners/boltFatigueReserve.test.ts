import { test } from "@fast-check/vitest";
import { between, MPa, nearly, refusesNonFinite } from "../check/support.test-support.ts";
import { boltFatigueReserve } from "./boltFatigueReserve.ts";

const bolt = {
  preloadStress: 600 * MPa,
  amplitude: 20 * MPa,
  enduranceStrength: 130 * MPa,
  tensileStrength: 1040 * MPa,
};

test.prop([between(0, 1000), between(1, 200)])(
  "at its reserve the stresses lie on Goodman's line",
  (preload, amplitude) => {
    const one = { ...bolt, preloadStress: preload * MPa, amplitude: amplitude * MPa };
    const reserve = boltFatigueReserve(one);
    const swing = reserve * one.amplitude;
    // The mean rises with the amplitude: the load pulls from the preload upwards.
    nearly(swing / bolt.enduranceStrength + (one.preloadStress + swing) / bolt.tensileStrength, 1);
  },
);

test("refusals", () => refusesNonFinite(boltFatigueReserve, bolt));
