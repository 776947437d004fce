import { test } from "vitest";
import { bar, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { compressionPressure, compressionTemperature, crankingPressure } from "./compressionPressure.ts";

const running = { trappedCompressionRatio: 7.04, polytropicExponent: 1.32 };

test("examples", () => {
  near(compressionPressure({ ...running, inletPressure: 2 * bar }) / bar, 26.292, 5e-3);
  near(compressionTemperature({ ...running, inletTemperature: 340 }), 634.9, 0.5);
  const cranking = { trappedCompressionRatio: 7.04, polytropicExponent: 1.25, ambientPressure: 1 * bar };
  near(crankingPressure(cranking) / bar, 10.47, 5e-3);
});

test("boundary", () => {
  const pressure = { ...running, inletPressure: 2 * bar };
  refuses(() => compressionPressure({ ...pressure, polytropicExponent: 1 }), "polytropicExponent");
  refuses(() => compressionPressure({ ...pressure, trappedCompressionRatio: 1 }), "trappedCompressionRatio");
  refusesNonFinite(compressionPressure, pressure);
  refusesNonFinite(compressionTemperature, { ...running, inletTemperature: 340 });
  refusesNonFinite(crankingPressure, { ...running, ambientPressure: 1 * bar });
});
