import { test } from "@fast-check/vitest";
import { expect } from "vitest";
import {
  bar,
  between,
  cm3,
  cranks,
  deg,
  kN,
  mm,
  near,
  nearly,
  offsetCrank,
  refuses,
  rpm,
} from "../check/support.test-support.ts";
import { rodAngle } from "../kinematics/rodAngle.ts";
import { boreArea } from "../volumes/boreArea.ts";
import { cylinderVolumeAt } from "../volumes/cylinderVolumeAt.ts";
import { crankForces, greatestOverCycle, meanOverCycle } from "./crankForces.ts";
import { crankpinLoad, crankTorque } from "./crankpinLoad.ts";
import { gasForce } from "./gasForce.ts";
import { rodAxialForce } from "./rodAxialForce.ts";
import { sideThrust } from "./sideThrust.ts";

const quiet = {
  crank: offsetCrank,
  bore: 86.5 * mm,
  pressureAt: () => 1 * bar,
  casePressure: 1 * bar,
  reciprocatingMass: 0.634,
  rotatingRodMass: 0.405,
  angularSpeed: 7800 * rpm,
};

test("example: crankpin at top dead centre without gas", () =>
  near(crankForces(quiet)(0).crankpin.magnitude / kN, 39.047, 0.02));

test.prop([cranks, between(-400, 800), between(100, 12000), between(0, 150)])(
  "rod, side thrust, crankpin and torque are what the single laws give, one after the other",
  (crank, degrees, speed, pressure) => {
    const cylinder = { ...quiet, crank, angularSpeed: speed * rpm };
    const angle = degrees * deg;
    const gas = gasForce({ ...quiet, cylinderPressure: pressure * bar });
    const rodForce = rodAxialForce({ ...cylinder, angle, gasForce: gas });
    const found = crankForces({ ...cylinder, pressureAt: () => pressure * bar })(angle);
    const slack = 1e-9 * (Math.abs(gas) + quiet.reciprocatingMass * cylinder.angularSpeed ** 2 + 1);
    near(found.rod, rodForce, slack);
    near(found.side, sideThrust({ rodForce, rodAngle: rodAngle(crank, angle) }), slack);
    near(found.torque, crankTorque({ crank, angle, rodForce }), slack);
    const load = crankpinLoad({ ...cylinder, angle, rodForce });
    near(found.crankpin.x, load.x, slack);
    near(found.crankpin.y, load.y, slack);
    near(found.crankpin.magnitude, load.magnitude, slack);
  },
);

test("boundary: what cannot be is refused at once, a pressure below zero at its angle", () => {
  refuses(() => crankForces({ ...quiet, bore: 0 }), "bore");
  refuses(() => crankForces({ ...quiet, casePressure: -1 }), "casePressure");
  refuses(() => crankForces({ ...quiet, reciprocatingMass: -1 }), "reciprocatingMass");
  refuses(() => crankForces({ ...quiet, rotatingRodMass: -1 }), "rotatingRodMass");
  refuses(() => crankForces({ ...quiet, angularSpeed: Number.NaN }), "angularSpeed");
  const broken = crankForces({ ...quiet, pressureAt: (angle) => (angle > 1 ? -1 : bar) });
  expect(broken(0).rod).toBeLessThan(0);
  refuses(() => broken(2), "pressure");
});

test.prop([between(500, 12000)])("inertia alone does no work over a turn", (speed) => {
  const forces = crankForces({
    ...quiet,
    crank: { ...offsetCrank, pinLineOffset: 0 },
    angularSpeed: speed * rpm,
  });
  const greatest = greatestOverCycle((angle) => forces(angle).torque).value;
  near(
    meanOverCycle((angle) => forces(angle).torque),
    0,
    1e-9 * greatest,
  );
});

test("the mean torque of the gas is its work over two turns", () => {
  const crank = { ...offsetCrank, pinLineOffset: 0 };
  const engine = { crank, bore: 86.5 * mm, clearanceVolume: 69 * cm3 };
  const pressureAt = (angle: number) =>
    1 * bar + 20 * bar * Math.exp(-(((angle - 20 * deg) / (40 * deg)) ** 2));
  const forces = crankForces({ ...quiet, crank, pressureAt, reciprocatingMass: 0, rotatingRodMass: 0 });
  let work = 0;
  const cells = 20000;
  for (let i = 0; i < cells; i++) {
    const [from, to] = [-Math.PI + (i * 4 * Math.PI) / cells, -Math.PI + ((i + 1) * 4 * Math.PI) / cells];
    const volume = (angle: number) => cylinderVolumeAt({ ...engine, angle });
    work += ((pressureAt(from) + pressureAt(to)) / 2 - bar) * (volume(to) - volume(from));
  }
  nearly(meanOverCycle((angle) => forces(angle).torque) * 4 * Math.PI, work, 1e-5);
});

test.prop([between(-180, 540), between(1000, 12000), between(0, 150)])(
  "the crankpin's load is what moves the rod's two masses, by differences of their places",
  (degrees, speed, pressure) => {
    const { throwRadius: r, rodLength: l, pinLineOffset: e } = offsetCrank;
    const omega = speed * rpm;
    const at = degrees * deg;
    const height = (angle: number) =>
      r * Math.cos(angle) + Math.sqrt(l ** 2 - (r * Math.sin(angle) - e) ** 2);
    const step = 1e-4;
    const second = (f: (angle: number) => number) =>
      ((f(at + step) - 2 * f(at) + f(at - step)) / step ** 2) * omega ** 2;
    const { crankpin } = crankForces({ ...quiet, angularSpeed: omega, pressureAt: () => pressure * bar })(at);
    // Along the cylinder: gas presses down, both masses want their accelerations.
    const gas = (pressure - 1) * bar * boreArea(quiet.bore);
    const y =
      -gas -
      quiet.reciprocatingMass * second(height) -
      quiet.rotatingRodMass * second((a) => r * Math.cos(a));
    near(crankpin.y, y, 3e-6 * Math.abs(y) + 5);
  },
);

test("a greater gas pressure gives a greater side thrust on the thrust side", () => {
  const thrust = (pressure: number) =>
    greatestOverCycle((angle) => crankForces({ ...quiet, pressureAt: () => pressure * bar })(angle).side)
      .value;
  expect(thrust(60)).toBeGreaterThan(thrust(30));
});
