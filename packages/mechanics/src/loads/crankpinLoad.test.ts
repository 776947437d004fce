import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import {
  angles,
  between,
  centredCrank,
  cranks,
  deg,
  kN,
  near,
  offsetCrank,
  refuses,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { pistonVelocity } from "../kinematics/pistonVelocity.ts";
import { rodAngle } from "../kinematics/rodAngle.ts";
import { crankpinLoad, crankTorque } from "./crankpinLoad.ts";
import { rodAxialForce } from "./rodAxialForce.ts";

const angularSpeed = 7800 * rpm;
const rodForce = rodAxialForce({
  crank: offsetCrank,
  angle: 0,
  angularSpeed,
  reciprocatingMass: 0.634,
  gasForce: 0,
});
const input = { crank: offsetCrank, angle: 0, angularSpeed, rodForce, rotatingRodMass: 0.405 };

test("examples and boundary", () => {
  near(crankpinLoad(input).y / kN, 39.047, 5e-3);
  near(crankTorque({ crank: centredCrank, angle: 20 * deg, rodForce: 50 * kN }), 1044.4, 0.05);
  refuses(() => crankpinLoad({ ...input, rotatingRodMass: -1 }), "rotatingRodMass");
  refusesNonFinite(crankpinLoad, input);
  refusesNonFinite(crankTorque, { crank: offsetCrank, angle: 1, rodForce: 1 });
});

property.prop([cranks, angles, between(-5e4, 5e4)])(
  "the torque's power is the piston's",
  (crank, angle, force) => {
    // Virtual work: the rod is pushed along by the piston with its axial component, whatever the offset.
    const alongCylinder = force * Math.cos(rodAngle(crank, angle));
    const torque = crankTorque({ crank, angle, rodForce: force });
    near(torque, -alongCylinder * pistonVelocity(crank, angle, 1), 1e-8);
  },
);

property.prop([cranks, angles, between(-5e4, 5e4)])(
  "a rod without mass passes its force on",
  (crank, angle, force) => {
    const load = crankpinLoad({ crank, angle, angularSpeed, rodForce: force, rotatingRodMass: 0 });
    near(load.magnitude, Math.abs(force), 1e-9);
    const { throwRadius: r } = crank;
    // Moment of the load about the crank axis, positive with rotation.
    near(
      r * Math.cos(angle) * load.x - r * Math.sin(angle) * load.y,
      crankTorque({ crank, angle, rodForce: force }),
      1e-8,
    );
  },
);

property.prop([cranks, angles])(
  "without rod force the rotating mass pulls straight out along the throw",
  (crank, angle) => {
    const load = crankpinLoad({ crank, angle, angularSpeed: 100, rodForce: 0, rotatingRodMass: 0.4 });
    const pull = 0.4 * crank.throwRadius * 100 ** 2;
    near(load.x, pull * Math.sin(angle), 1e-9);
    near(load.y, pull * Math.cos(angle), 1e-9);
  },
);
