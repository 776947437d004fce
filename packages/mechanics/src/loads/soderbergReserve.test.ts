import { test } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, MPa, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { fatigueReserve } from "./fatigueReserve.ts";
import { soderbergReserve } from "./soderbergReserve.ts";

const part = { amplitude: 120 * MPa, mean: 120 * MPa, fatigueStrength: 400 * MPa, yieldStrength: 800 * MPa };

test("example: 1 / (0.3 + 0.15)", () => nearly(soderbergReserve(part), 1 / 0.45));

test.prop([between(1, 400), between(0, 800)])("lies below both bounds that it joins", (amplitude, mean) => {
  const stress = { amplitude: amplitude * MPa, mean: mean * MPa };
  const found = soderbergReserve({ ...part, ...stress });
  expect(found).toBeLessThanOrEqual((part.fatigueStrength / stress.amplitude) * (1 + 1e-12));
  expect(found).toBeLessThanOrEqual((part.yieldStrength / (stress.amplitude + stress.mean)) * 2);
  // On the line itself the reserve is 1: scaled up by it, the stress lies there.
  nearly(
    soderbergReserve({ ...part, amplitude: found * stress.amplitude, mean: found * stress.mean }),
    1,
    1e-12,
  );
});

test("without a mean it is the plain fatigue reserve", () =>
  nearly(
    soderbergReserve({ ...part, mean: 0 }),
    fatigueReserve({ allowableAmplitude: 400 * MPa, compressiveStress: 120 * MPa, tensileStress: 120 * MPa }),
  ));

test("boundary", () => {
  refuses(() => soderbergReserve({ ...part, amplitude: 0, mean: 0 }), "amplitude + mean");
  refuses(() => soderbergReserve({ ...part, mean: -1 }), "mean");
  refusesNonFinite(soderbergReserve, part);
});
