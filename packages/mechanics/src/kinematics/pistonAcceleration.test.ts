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
import { pistonAcceleration, pistonAccelerationOver } from "./pistonAcceleration.ts";
import { pistonVelocity } from "./pistonVelocity.ts";
import { rodAngle } from "./rodAngle.ts";

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

property.prop([cranks, angles])("checked once it is the same, and by the rod's angle", (crank, angle) => {
  const phi = rodAngle(crank, angle);
  const [across, along] = [crank.throwRadius * Math.sin(angle), crank.throwRadius * Math.cos(angle)];
  const textbook = -along + across * Math.tan(phi) - along ** 2 / (crank.rodLength * Math.cos(phi) ** 3);
  near(pistonAccelerationOver(crank, 3)(angle), 9 * textbook, 1e-13);
  near(pistonAccelerationOver(crank, 3)(angle), pistonAcceleration(crank, angle, 3), 0);
});

property.prop([cranks])("without an offset the dead centres follow r w2 (1 +- r/l)", (crank) => {
  const { throwRadius: r, rodLength: l } = crank;
  const centred = { ...crank, pinLineOffset: 0 };
  near(pistonAcceleration(centred, 0, 1), -r * (1 + r / l), 1e-14);
  near(pistonAcceleration(centred, Math.PI, 1), r * (1 - r / l), 1e-14);
});
