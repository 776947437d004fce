import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { bar, between, nearly } from "../check/support.test-support.ts";
import { dryAirPressure, moistAirDensity, saturationPressure } from "./ambientAir.ts";
import { airDensity } from "./meanEffectivePressure.ts";

property.prop([between(240, 330), between(0.7 * bar, 1.1 * bar)])(
  "dry air is all of the air, and moist air is the lighter",
  (temperature, pressure) => {
    nearly(dryAirPressure({ pressure, temperature, humidity: 0 }), pressure);
    const vapour = pressure - dryAirPressure({ pressure, temperature, humidity: 1 });
    nearly(vapour, saturationPressure(temperature));
    nearly(moistAirDensity({ pressure, temperature, humidity: 0 }), airDensity({ pressure, temperature }));
    const humid = moistAirDensity({ pressure, temperature, humidity: 1 });
    expect(humid).toBeLessThan(airDensity({ pressure, temperature }));
  },
);

property.prop([between(245, 325)])(
  "water boils off as Clausius and Clapeyron say, at 2.26 to 2.84 MJ a kilogram",
  (temperature) => {
    const step = 0.01;
    const slope =
      Math.log(saturationPressure(temperature + step) / saturationPressure(temperature - step)) / (2 * step);
    // Latent heat from the slope, L = R_v T^2 d(ln p)/dT.
    const latent = 461.5 * temperature ** 2 * slope;
    expect(latent).toBeGreaterThan(2.26e6);
    expect(latent).toBeLessThan(2.84e6);
  },
);
