import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { angles, deg, near, offsetCrank, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { pinHeight } from "../kinematics/pinHeight.ts";
import { accelerationHarmonics } from "./accelerationHarmonics.ts";
import {
  anyEngine,
  crossPlane,
  engine,
  exampleCrank,
  inlineFour,
  inlineSix,
  spacing,
  speed,
  unit,
} from "./layouts.test-support.ts";
import type { MovingMasses } from "./MovingMasses.ts";
import { greatestShakingForce, shakingForce } from "./shakingForce.ts";

const greatest = (reciprocating: MovingMasses["reciprocating"]) =>
  greatestShakingForce({ reciprocating, revolving: [], angularSpeed: speed });
const ratio = exampleCrank.throwRadius / exampleCrank.rodLength;

test("four in line: the peak is 4 m r omega^2 lambda / sqrt(1 - lambda^2), with the throws across", () => {
  const { force, couple } = greatest(engine(inlineFour));
  near(force.value, 13919, 0.5);
  near(force.value / ((4 * unit * ratio) / Math.sqrt(1 - ratio ** 2)), 1, 1e-12);
  near(Math.abs(Math.cos(force.angle)), 0, 1e-6);
  near(couple.value / (unit * spacing), 0, 1e-12);
});

test("six in line: only the sixth order and its multiples are left, and no couple", () => {
  const { force, couple } = greatest(engine(inlineSix));
  near(force.value / unit, 0.001375976, 5e-10);
  const sixth = accelerationHarmonics({ crank: exampleCrank, greatestOrder: 6 })[5]!.cosine;
  near(force.value / (6 * sixth * unit), 1, 0.002);
  near(couple.value / (unit * spacing), 0, 1e-12);
});

test("cross-plane V8: only the fourth order and its multiples are left; the couple turns with the crank", () => {
  const { force, couple } = greatest(engine(crossPlane, [-45, 45]));
  near(force.value / unit, 0.04559279, 5e-9);
  const orders = accelerationHarmonics({ crank: exampleCrank, greatestOrder: 8 });
  // Half a cycle of the fourth order after the reference axis both pull the same way.
  const [fourth, eighth] = [orders[3]!.cosine, orders[7]!.cosine];
  near(force.value / unit, 8 * Math.SQRT1_2 * (Math.abs(fourth) + Math.abs(eighth)), 1e-5);
  expect(couple.value / (unit * spacing)).toBeGreaterThan(Math.sqrt(10));
  near(Math.sqrt(10) * unit * spacing, 3707.799, 0.0005);
});

test("flat twin with a throw for each: no force at all, a couple from the distance of the throws", () => {
  const twin = engine([0, 180], [90]).map((cylinder, i) => ({
    ...cylinder,
    bankAngle: (i ? -90 : 90) * deg,
  }));
  const { force, couple } = greatest(twin);
  near(force.value / unit, 0, 1e-14);
  near(couple.value / (unit * spacing * (1 + ratio)), 1, 1e-12);
});

test("90 degree V pair: a counterweight of one reciprocating mass opposite the pin leaves no first order", () => {
  const pair = engine([0], [-45, 45], { ...exampleCrank, rodLength: 4.5e6 });
  const weight = { mass: 0.6, radius: 0.045, angle: Math.PI, axialPosition: 0 };
  const input = { reciprocating: pair, angularSpeed: speed };
  near(greatestShakingForce({ ...input, revolving: [weight] }).force.value / unit, 0, 1e-7);
  near(greatestShakingForce({ ...input, revolving: [] }).force.value / unit, 1, 1e-7);
});

test("signs: a single at top dead centre pulls away from the crank, its counterweight the other way", () => {
  const single = { reciprocating: engine([0]), revolving: [], crankAngle: 0, angularSpeed: speed };
  const found = shakingForce(single);
  near(found.forceY / unit, 1 + ratio, 1e-12);
  near(found.forceX, 0, 1e-9);
  const weight = { mass: 0.6, radius: 0.045, angle: Math.PI, axialPosition: 0.1 };
  const balanced = shakingForce({ ...single, revolving: [weight], crankAngle: Math.PI / 2 });
  near(balanced.forceX / unit, -1, 1e-12);
  near(balanced.coupleX / unit, -0.1, 1e-12);
});

test("peaks beside the start of the turn, and of nearly one height, are found", () => {
  for (const shift of [0, 1e-9, 0.003, -0.003, 0.0087, -0.0087, Math.PI, Math.PI + 0.004]) {
    const single = engine([0]).map((cylinder) => ({ ...cylinder, pinAngle: shift }));
    const { force } = greatest(single);
    near(force.value / unit, 1 + ratio, 1e-12);
    near(Math.cos(force.angle + shift), 1, 1e-12);
    expect(force.angle).toBeGreaterThanOrEqual(0);
    expect(force.angle).toBeLessThan(2 * Math.PI);
  }
});

test("a mass on the crankshaft alone pulls the same at every angle", () => {
  const weight = { mass: 2, radius: 0.05, angle: 0.7, axialPosition: -0.2 };
  const found = greatestShakingForce({ reciprocating: [], revolving: [weight], angularSpeed: 100 });
  near(found.force.value, 1000, 1e-9);
  near(found.couple.value, 200, 1e-9);
});

test("boundary", () => {
  const weight = { mass: 1, radius: 0.05, angle: 1, axialPosition: 0.1 };
  const input = { reciprocating: engine([0], [0], offsetCrank), revolving: [weight], angularSpeed: speed };
  refusesNonFinite(shakingForce, { ...input, crankAngle: 1 });
  refusesNonFinite(greatestShakingForce, input);
  const none = { reciprocating: [], revolving: [], angularSpeed: 1 };
  refuses(() => greatestShakingForce(none), "reciprocating and revolving");
  const light = { ...input, revolving: [{ ...weight, mass: -1 }] };
  refuses(() => greatestShakingForce(light), "revolving[0].mass");
  const long = { ...exampleCrank, rodLength: 0.04 };
  refuses(() => greatestShakingForce({ ...input, reciprocating: engine([0], [0], long) }), "rodLength");
});

property.prop([anyEngine, angles])(
  "force and couple are second derivatives of the masses' positions",
  (masses, at) => {
    /** Sum of mass times position [x, y] and the same weighted with the axial position. */
    const moments = (angle: number) => {
      const total = [0, 0, 0, 0];
      const add = (size: number, direction: number, z: number) => {
        const [x, y] = [size * Math.sin(direction), size * Math.cos(direction)];
        [x, y, z * x, z * y].forEach((value, i) => {
          total[i] = total[i]! + value;
        });
      };
      for (const { crank, mass, pinAngle, bankAngle, axialPosition } of masses.reciprocating)
        add(mass * pinHeight(crank, angle + pinAngle - bankAngle), bankAngle, axialPosition);
      for (const { mass, radius, angle: own, axialPosition } of masses.revolving)
        add(mass * radius, angle + own, axialPosition);
      return total;
    };
    const step = 1e-3;
    const [before, here, after] = [moments(at - step), moments(at), moments(at + step)];
    const found = shakingForce({ ...masses, crankAngle: at, angularSpeed: 1 });
    [found.forceX, found.forceY, found.coupleX, found.coupleY].forEach((value, i) => {
      near(value, -(before[i]! - 2 * here[i]! + after[i]!) / step ** 2, 2e-6);
    });
  },
);

property.prop([anyEngine, angles])("no crank angle gives more than the greatest", (masses, crankAngle) => {
  const { force, couple } = greatestShakingForce({ ...masses, angularSpeed: 1 });
  const found = shakingForce({ ...masses, crankAngle, angularSpeed: 1 });
  expect(Math.hypot(found.forceX, found.forceY)).toBeLessThanOrEqual(force.value * (1 + 1e-12));
  expect(Math.hypot(found.coupleX, found.coupleY)).toBeLessThanOrEqual(couple.value * (1 + 1e-12));
});
