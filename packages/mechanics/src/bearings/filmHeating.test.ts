import { test } from "vitest";
import { mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { oilTemperatureRise, trumplerFilm } from "./filmHeating.ts";

test("examples and boundary", () => {
  // 600 W carried off by half a litre a minute.
  const input = { frictionPower: 600, flow: 0.5e-3 / 60, density: 800, heatCapacity: 2200 };
  near(oilTemperatureRise(input), 40.9, 0.05);
  nearly(input.flow * 800 * 2200 * oilTemperatureRise(input), 600);
  refuses(() => oilTemperatureRise({ ...input, flow: 0 }), "flow");
  refusesNonFinite(oilTemperatureRise, input);
  near(trumplerFilm(50 * mm) / mm, 0.00708, 5e-9);
  refuses(() => trumplerFilm(0), "journalDiameter");
  refusesNonFinite(trumplerFilm, 50 * mm);
});
