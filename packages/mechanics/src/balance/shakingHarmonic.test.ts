import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { angles, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import {
  anyEngine,
  crossPlane,
  engine,
  exampleCrank,
  inlineFour,
  inlineSix,
  speed,
  unit,
} from "./layouts.test-support.ts";
import { shakingForce } from "./shakingForce.ts";
import { type PlaneHarmonic, shakingHarmonic } from "./shakingHarmonic.ts";

const ordersLeft = (pins: readonly number[], banks?: readonly number[]) =>
  [1, 2, 3, 4, 5, 6, 7, 8].filter((order) => {
    const input = { reciprocating: engine(pins, banks), revolving: [], order, angularSpeed: speed };
    return shakingHarmonic(input).force.greatest > 1e-12 * unit;
  });

test("the orders of force that layouts leave over", () => {
  expect(ordersLeft([0])).toEqual([1, 2, 4, 6, 8]);
  expect(ordersLeft(inlineFour)).toEqual([2, 4, 6, 8]);
  expect(ordersLeft(inlineSix)).toEqual([6]);
  expect(ordersLeft(crossPlane, [-45, 45])).toEqual([4, 8]);
});

test("90 degree V pair: the first order turns evenly with the pin and half the mass on it balances it", () => {
  const pair = { reciprocating: engine([0], [-45, 45]), order: 1, angularSpeed: speed };
  const { force } = shakingHarmonic({ ...pair, revolving: [] });
  near(force.greatest / unit, 1, 1e-13);
  near(force.least / unit, 1, 1e-13);
  near(force.backward / unit, 0, 1e-13);
  const weight = { mass: 0.6, radius: exampleCrank.throwRadius, angle: Math.PI, axialPosition: 0 };
  near(shakingHarmonic({ ...pair, revolving: [weight] }).force.greatest / unit, 0, 1e-13);
});

test("a single: the order stays on the cylinder's axis, half of it turning each way", () => {
  const { force } = shakingHarmonic({
    reciprocating: engine([0], [30]),
    revolving: [],
    order: 1,
    angularSpeed: speed,
  });
  near(force.greatest / unit, 1, 1e-13);
  near(force.least / unit, 0, 1e-13);
  near(force.forward / unit, 0.5, 1e-13);
  near(force.backward / unit, 0.5, 1e-13);
});

test("boundary", () => {
  const weight = { mass: 1, radius: 0.05, angle: 1, axialPosition: 0.1 };
  const input = { reciprocating: engine([0]), revolving: [weight], order: 1, angularSpeed: speed };
  refusesNonFinite(shakingHarmonic, input);
  refuses(() => shakingHarmonic({ ...input, order: 0 }), "order");
  refuses(() => shakingHarmonic({ ...input, order: 0.5 }), "order");
  refuses(
    () => shakingHarmonic({ ...input, reciprocating: [], revolving: [] }),
    "reciprocating and revolving",
  );
});

const valueAt = ({ cosine, sine }: PlaneHarmonic, turn: number) =>
  [0, 1].map((i) => cosine[i]! * Math.cos(turn) + sine[i]! * Math.sin(turn)) as [number, number];

property.prop([anyEngine, angles], { numRuns: 40 })(
  "the orders add up to the exact force and couple",
  (masses, crankAngle) => {
    const total = [0, 0, 0, 0];
    for (let order = 1; order <= 40; order++) {
      const { force, couple } = shakingHarmonic({ ...masses, order, angularSpeed: 1 });
      [...valueAt(force, order * crankAngle), ...valueAt(couple, order * crankAngle)].forEach((value, i) => {
        total[i] = total[i]! + value;
      });
    }
    const exact = shakingForce({ ...masses, crankAngle, angularSpeed: 1 });
    [exact.forceX, exact.forceY, exact.coupleX, exact.coupleY].forEach((value, i) => {
      near(total[i]!, value, 1e-11);
    });
  },
);

property.prop([anyEngine, angles])(
  "its size over the cycle lies between least and greatest",
  (masses, turn) => {
    for (const order of [1, 2]) {
      const { force, couple } = shakingHarmonic({ ...masses, order, angularSpeed: 1 });
      for (const harmonic of [force, couple]) {
        const size = Math.hypot(...valueAt(harmonic, turn));
        expect(size).toBeLessThanOrEqual(harmonic.greatest + 1e-14);
        expect(size).toBeGreaterThanOrEqual(harmonic.least - 1e-14);
      }
    }
  },
);

property.prop([anyEngine])(
  "the greatest size is reached, and the least a quarter of the cycle on",
  (masses) => {
    const { force } = shakingHarmonic({ ...masses, order: 1, angularSpeed: 1 });
    const dot = (a: readonly number[], b: readonly number[]) => a[0]! * b[0]! + a[1]! * b[1]!;
    const { cosine, sine } = force;
    const turn = Math.atan2(2 * dot(cosine, sine), dot(cosine, cosine) - dot(sine, sine)) / 2;
    near(Math.hypot(...valueAt(force, turn)), force.greatest, 1e-12);
    near(Math.hypot(...valueAt(force, turn + Math.PI / 2)), force.least, 1e-8);
  },
);
