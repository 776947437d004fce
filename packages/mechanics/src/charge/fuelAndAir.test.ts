import { test } from "vitest";
import { kN, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { airMassFlow, fuelFlow, injectorDuty, volumeFlow } from "./fuelAndAir.ts";

const running = { power: 440 * kN, specificFuelConsumption: 440 / 3.6e9 };

test("examples", () => {
  near(fuelFlow(running) * 1e3, 53.78, 5e-3);
  near(airMassFlow({ ...running, airFuelRatio: 7.8 }), 0.41947, 5e-6);
  near(injectorDuty({ fuelFlow: fuelFlow(running), injectors: 4, injectorFlow: 17.5e-3 }), 0.7683, 5e-5);
  nearly(volumeFlow({ massFlow: 0.41947, density: 1.2 }), 0.41947 / 1.2);
});

test("boundary", () => {
  refuses(() => injectorDuty({ fuelFlow: 1, injectors: 0, injectorFlow: 1 }), "injectors");
  refuses(() => volumeFlow({ massFlow: 1, density: 0 }), "density");
  refusesNonFinite(fuelFlow, running);
  refusesNonFinite(airMassFlow, { ...running, airFuelRatio: 7.8 });
  refusesNonFinite(injectorDuty, { fuelFlow: 1, injectors: 4, injectorFlow: 1 });
  refusesNonFinite(volumeFlow, { massFlow: 1, density: 1 });
});
