import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { bar, between, nearly, refuses, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { mechanicalEfficiency, thermalEfficiency, volumetricEfficiency } from "./efficiency.ts";
import { manifoldPressureNeeded } from "./meanEffectivePressure.ts";

const fuel = { specificFuelConsumption: 285 / 3.6e9, heatingValue: 43e6 };
const engine = { displacement: 2.2e-3, angularSpeed: 7000 * rpm, revolutionsPerCycle: 2 };
const breathing = { ...engine, airMassFlow: 0.2, pressure: 1 * bar, temperature: 300 };

test("examples and boundary", () => {
  nearly(thermalEfficiency(fuel), 0.29376, 1e-4);
  nearly(mechanicalEfficiency({ brake: 10, indicated: 12.5 }), 0.8);
  expect(mechanicalEfficiency({ brake: 0, indicated: 1 })).toBe(0);
  refuses(() => mechanicalEfficiency({ brake: 2, indicated: 1 }), "efficiency");
  refuses(() => thermalEfficiency({ ...fuel, heatingValue: 0 }), "heatingValue");
  refuses(() => volumetricEfficiency({ ...breathing, pressure: 0 }), "pressure");
  refusesNonFinite(thermalEfficiency, fuel);
  refusesNonFinite(volumetricEfficiency, breathing);
  refusesNonFinite(mechanicalEfficiency, { brake: 1, indicated: 2 });
});

property.prop([between(0.01, 1), between(280, 380)])(
  "at the pressure that a volumetric efficiency asks for, it is that",
  (airMassFlow, temperature) => {
    const wanted = { ...engine, airMassFlow, temperature };
    const pressure = manifoldPressureNeeded({ ...wanted, volumetricEfficiency: 0.9 });
    nearly(volumetricEfficiency({ ...wanted, pressure }), 0.9);
  },
);
