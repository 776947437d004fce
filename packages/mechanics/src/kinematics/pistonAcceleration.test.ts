import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import {
  angles,
  centredCrank,
  cranks,
  deg,
  near,
  offsetCrank,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { pistonAcceleration } from "./pistonAcceleration.ts";
import { pistonVelocity } from "./pistonVelocity.ts";

test("examples", () => {
  near(pistonAcceleration(offsetCrank, 0, 7800 * rpm), -41557.3, 0.05);
  near(pistonAcceleration(offsetCrank, 180 * deg, 7800 * rpm), 21158.1, 0.05);
  near(pistonAcceleration(centredCrank, 0, 7800 * rpm), -41557.1, 0.05);
  near(pistonAcceleration(centredCrank, Math.PI, 7800 * rpm), 21158.3, 0.05);
  refusesNonFinite(pistonAcceleration, offsetCrank, 1, 100);
});

property.prop([cranks, angles])("acceleration is the derivative of the velocity", (crank, angle) => {
  const step = 1e-5;
  const rise = pistonVelocity(crank, angle + step, 1) - pistonVelocity(crank, angle - step, 1);
  near(pistonAcceleration(crank, angle, 1), rise / (2 * step), 1e-9);
});

property.prop([cranks])("without an offset the dead centres follow r w2 (1 +- r/l)", (crank) => {
  const { throwRadius: r, rodLength: l } = crank;
  const centred = { ...crank, pinLineOffset: 0 };
  near(pistonAcceleration(centred, 0, 1), -r * (1 + r / l), 1e-14);
  near(pistonAcceleration(centred, Math.PI, 1), r * (1 - r / l), 1e-14);
});
