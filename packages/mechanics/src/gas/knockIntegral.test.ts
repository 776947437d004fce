import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  bar,
  between,
  deg,
  near,
  nearly,
  refuses,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { demoCycle } from "./cycle.test-support.ts";
import { ignitionDelay, knockIntegral } from "./knockIntegral.ts";
import { runClosedCycle } from "./runClosedCycle.ts";

const end = { octane: 95, pressure: 60 * bar, temperature: 900 };
const run = runClosedCycle(demoCycle, 5000);
const knock = {
  run,
  chargeTemperature: 343,
  heatCapacityRatio: 1.32,
  octane: 98,
  angularSpeed: 7400 * rpm,
  until: 42 * deg,
};

test("examples and boundary", () => {
  // 17.68 ms x 0.8399 x (59.215)^-1.7 x exp(4.2222) = 17.68 ms x 0.8399 x 9.699e-4 x 68.18.
  nearly(ignitionDelay(end), 0.982e-3, 2e-3);
  refuses(() => ignitionDelay({ ...end, octane: 0 }), "octane");
  refuses(() => knockIntegral({ ...knock, heatCapacityRatio: 1 }), "heatCapacityRatio");
  refusesNonFinite(ignitionDelay, end);
  const { run: _, ...numbers } = knock;
  refusesNonFinite((one: typeof numbers) => knockIntegral({ ...one, run }), numbers);
});

test("a gas that is held still lives through as much as the time over its delay", () => {
  const steps = 101;
  const angles = Float64Array.from({ length: steps }, (_, i) => i * deg);
  const held = { ...run, angles, volumes: angles, pressures: new Float64Array(steps).fill(50 * bar) };
  const delay = ignitionDelay({ octane: 98, pressure: 50 * bar, temperature: 343 });
  const ofHeld = knockIntegral({ ...knock, run: held, until: 40.5 * deg });
  nearly(ofHeld, (40.5 * deg) / (7400 * rpm) / delay, 1e-9);
});

test("agrees with a finer step", () => {
  const fine = runClosedCycle({ ...demoCycle, step: deg / 8 }, 5000);
  nearly(knockIntegral(knock), knockIntegral({ ...knock, run: fine }), 5e-3);
});

property.prop([between(85, 110), between(0, 30)])(
  "more octane, more speed, less knock; hotter, more",
  (octane, hotter) => {
    const at = knockIntegral({ ...knock, octane });
    expect(knockIntegral({ ...knock, octane: octane + 1 })).toBeLessThan(at);
    nearly(knockIntegral({ ...knock, octane, angularSpeed: 2 * knock.angularSpeed }), at / 2);
    expect(knockIntegral({ ...knock, octane, chargeTemperature: 344 + hotter })).toBeGreaterThan(at);
    near(knockIntegral({ ...knock, octane, until: -112 * deg }), 0, 1e-12);
  },
);
