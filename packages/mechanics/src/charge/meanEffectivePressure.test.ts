import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import {
  bar,
  between,
  cm3,
  kN,
  near,
  nearly,
  refuses,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import {
  airDensity,
  brakeMeanEffectivePressure,
  manifoldPressureNeeded,
  meanEffectivePressureFromTorque,
  powerFromMeanEffectivePressure,
  speedOfSound,
} from "./meanEffectivePressure.ts";

const engine = { displacement: 2209.6 * cm3, angularSpeed: 7400 * rpm, revolutionsPerCycle: 2 };
const breathing = { ...engine, airMassFlow: 0.4195, temperature: 318.15, volumetricEfficiency: 0.98 };

test("examples", () => {
  near(brakeMeanEffectivePressure({ ...engine, power: 440 * kN }) / bar, 32.292, 1e-3);
  near(manifoldPressureNeeded(breathing) / bar, 2.869, 5e-4);
  near(speedOfSound(318), 357.5, 0.1);
  near(airDensity({ pressure: 101_325, temperature: 288.15 }), 1.225, 5e-4);
});

test("boundary", () => {
  refuses(() => brakeMeanEffectivePressure({ ...engine, displacement: 0, power: 1 }), "displacement");
  refusesNonFinite(brakeMeanEffectivePressure, { ...engine, power: 1 });
  refusesNonFinite(powerFromMeanEffectivePressure, { ...engine, meanEffectivePressure: 1 });
  refusesNonFinite(manifoldPressureNeeded, breathing);
  refusesNonFinite((temperature: number) => speedOfSound(temperature), 300);
  refusesNonFinite(airDensity, { pressure: 1e5, temperature: 300 });
});

property.prop([between(1e3, 1e6)])("power to pressure and back", (power) => {
  const meanEffectivePressure = brakeMeanEffectivePressure({ ...engine, power });
  nearly(powerFromMeanEffectivePressure({ ...engine, meanEffectivePressure }), power);
});

property.prop([between(0.5e5, 4e5)])(
  "an engine filled at its manifold density needs that pressure",
  (pressure) => {
    const cyclesPerSecond = engine.angularSpeed / (4 * Math.PI);
    const airMassFlow =
      airDensity({ pressure, temperature: 318 }) * engine.displacement * cyclesPerSecond * 0.98;
    nearly(manifoldPressureNeeded({ ...breathing, temperature: 318, airMassFlow }), pressure);
  },
);

property.prop([between(1, 900), between(0.1, 16), between(500, 12000)])(
  "the mean effective pressure of a torque is that of its power at any speed",
  (torque, litres, speed) => {
    const running = { displacement: litres * 1e-3, revolutionsPerCycle: 2, angularSpeed: speed * rpm };
    nearly(
      meanEffectivePressureFromTorque({ ...running, torque }),
      brakeMeanEffectivePressure({ ...running, power: torque * running.angularSpeed }),
    );
  },
);

test("a torque below zero is refused", () => {
  refuses(() => meanEffectivePressureFromTorque({ ...engine, torque: -1 }), "torque");
  refuses(() => meanEffectivePressureFromTorque({ ...engine, torque: 1, displacement: 0 }), "displacement");
});
