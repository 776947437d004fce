import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import {
  densityAltitude,
  dryAirPressure,
  moistAirDensity,
  saturationPressure,
  standardAtmosphere,
} from "./ambientAir.ts";
import { airDensity } from "./meanEffectivePressure.ts";

const air = { pressure: 100_000, temperature: 303.15, humidity: 0.6 };

test("examples and boundary", () => {
  // Steam tables: 0.6112 kPa at 0 degC, 2.339 kPa at 20 degC, 4.246 kPa at 30 degC, 12.35 kPa at 50 degC.
  nearly(saturationPressure(273.16), 611.7, 2e-3);
  nearly(saturationPressure(293.15), 2339, 4e-3);
  nearly(saturationPressure(303.15), 4246, 4e-3);
  nearly(saturationPressure(323.15), 12_350, 5e-3);
  near(dryAirPressure(air), 100_000 - 0.6 * 4246, 15);
  // Moist air at 30 degC and 60 % is 1.1 % lighter than dry: 1.1367 against 1.1492 kg/m3... by the sum of both gases.
  near(moistAirDensity(air), (97_452 / 287.05 + 2548 / 461.5) / 303.15, 2e-4);
  nearly(moistAirDensity({ ...air, humidity: 0 }), airDensity(air));
  nearly(standardAtmosphere(0).pressure, 101_325);
  near(standardAtmosphere(1500).pressure, 84_556, 40);
  near(densityAltitude(1.225), 0, 1e-9);
  refuses(() => dryAirPressure({ ...air, humidity: 1.1 }), "humidity");
  refuses(() => dryAirPressure({ ...air, pressure: 2000 }), "pressure");
  refuses(() => saturationPressure(200), "temperature");
  refuses(() => standardAtmosphere(20_000), "altitude");
  refusesNonFinite(moistAirDensity, air);
  refusesNonFinite(dryAirPressure, air);
  refusesNonFinite((one: { temperature: number }) => saturationPressure(one.temperature), {
    temperature: 300,
  });
  refusesNonFinite((one: { altitude: number }) => standardAtmosphere(one.altitude), { altitude: 1 });
  refusesNonFinite((one: { density: number }) => densityAltitude(one.density), { density: 1 });
});

property.prop([between(-1000, 8000)])("the altitude of a standard density is recovered", (altitude) => {
  near(densityAltitude(airDensity(standardAtmosphere(altitude))), altitude, 1);
});

property.prop([between(0, 0.9)])("moisture makes air thinner", (humidity) => {
  expect(moistAirDensity({ ...air, humidity: humidity + 0.1 })).toBeLessThan(
    moistAirDensity({ ...air, humidity }),
  );
});
