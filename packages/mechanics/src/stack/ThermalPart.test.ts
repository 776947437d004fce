import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { thermalGrowth } from "./ThermalPart.ts";

test("example: 200 cm of steel warmed by 70 K; cooling shrinks", () => {
  const part = { size: 2, expansion: 12e-6, temperatureRise: 70 };
  near(thermalGrowth(part) / mm, 1.68, 1e-9);
  near(thermalGrowth({ ...part, temperatureRise: -70 }) / mm, -1.68, 1e-9);
  refuses(() => thermalGrowth({ ...part, size: 0 }), "size");
  refusesNonFinite(thermalGrowth, part);
});
