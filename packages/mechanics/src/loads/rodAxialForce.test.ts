import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import {
  angles,
  cranks,
  kN,
  near,
  nearly,
  offsetCrank,
  refuses,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { pistonAcceleration } from "../kinematics/pistonAcceleration.ts";
import { rodAngle } from "../kinematics/rodAngle.ts";
import { rodAxialForce } from "./rodAxialForce.ts";

const input = {
  crank: offsetCrank,
  angle: 0,
  angularSpeed: 7800 * rpm,
  reciprocatingMass: 0.634,
  gasForce: 0,
};

test("example and boundary", () => {
  near(rodAxialForce(input) / kN, -26.35, 5e-3);
  refuses(() => rodAxialForce({ ...input, reciprocatingMass: -1 }), "reciprocatingMass");
  refusesNonFinite(rodAxialForce, input);
});

property.prop([cranks, angles])("gas, inertia and rod balance along the cylinder", (crank, angle) => {
  const force = rodAxialForce({ ...input, crank, angle, gasForce: 20 * kN });
  const along = force * Math.cos(rodAngle(crank, angle));
  nearly(along - 0.634 * pistonAcceleration(crank, angle, input.angularSpeed), 20 * kN, 1e-9);
});
