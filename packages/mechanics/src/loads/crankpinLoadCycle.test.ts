import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, cranks, mm, near, nearly, refuses, rpm } from "../check/support.test-support.ts";
import { rodAngle } from "../kinematics/rodAngle.ts";
import { crankpinLoad } from "./crankpinLoad.ts";
import { CYCLE_SAMPLES, crankpinLoadCycle, cycleValue, sizeOverCycle } from "./crankpinLoadCycle.ts";
import { gasForce } from "./gasForce.ts";
import { rodAxialForce } from "./rodAxialForce.ts";

const running = {
  bore: 86.5 * mm,
  pressureAt: (angle: number) => 2e6 * (1 + Math.cos(angle / 2)),
  casePressure: 1e5,
  reciprocatingMass: 0.634,
  rotatingRodMass: 0.405,
  angularSpeed: 7400 * rpm,
};
const step = (4 * Math.PI) / CYCLE_SAMPLES;

property.prop([cranks])(
  "every sample is what the single laws give, one after the other, and the swing the rod's slope",
  (crank) => {
    const cylinder = { ...running, crank };
    const cycle = crankpinLoadCycle(cylinder);
    const at = (angle: number) => {
      const gas = gasForce({ ...running, cylinderPressure: running.pressureAt(angle) });
      const rodForce = rodAxialForce({ ...cylinder, angle, gasForce: gas });
      return crankpinLoad({ ...cylinder, angle, rodForce });
    };
    let [sum, greatest] = [0, 0];
    for (let i = 0; i < CYCLE_SAMPLES; i++) {
      const { x, y, magnitude } = at(i * step);
      near(cycle.x[i]!, x, 1e-6 * magnitude + 1e-6);
      near(cycle.y[i]!, y, 1e-6 * magnitude + 1e-6);
      const slope = (rodAngle(crank, i * step + 1e-5) - rodAngle(crank, i * step - 1e-5)) / 2e-5;
      near(cycle.swing[i]!, slope, 1e-8);
      sum += magnitude;
      greatest = Math.max(greatest, magnitude);
    }
    nearly(sizeOverCycle(cycle).mean, sum / CYCLE_SAMPLES);
    nearly(sizeOverCycle(cycle).greatest, greatest);
  },
);

property.prop([between(-40, 40)])(
  "between samples it runs straight, and repeats every two turns",
  (angle) => {
    const ramp = Float64Array.from({ length: 8 }, (_, i) => i);
    const place = ((((angle / (4 * Math.PI)) * 8) % 8) + 8) % 8;
    near(cycleValue(ramp, angle), place <= 7 ? place : 7 * (8 - place), 1e-9);
    near(cycleValue(ramp, angle + 4 * Math.PI), cycleValue(ramp, angle), 1e-9);
  },
);

test("boundary", () => {
  const crank = { throwRadius: 47 * mm, rodLength: 144.5 * mm, pinLineOffset: 0 };
  refuses(() => crankpinLoadCycle({ ...running, crank, bore: 0 }), "bore");
  refuses(() => crankpinLoadCycle({ ...running, crank, casePressure: -1 }), "casePressure");
  refuses(() => crankpinLoadCycle({ ...running, crank, angularSpeed: Number.NaN }), "angularSpeed");
  expect(() => crankpinLoadCycle({ ...running, crank: { ...crank, rodLength: 40 * mm } })).toThrow(
    RangeError,
  );
});
