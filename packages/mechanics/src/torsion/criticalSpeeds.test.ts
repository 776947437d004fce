import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, nearly, refuses, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { criticalSpeeds, criticalsWithin } from "./criticalSpeeds.ts";

const input = { angularFrequency: 383.2 * 2 * Math.PI, cylinders: 6, greatestOrder: 6 };

test("examples", () => {
  const speeds = criticalSpeeds(input);
  const at = (order: number) => speeds.find((speed) => speed.order === order)!;
  near(at(3).angularSpeed / rpm, 7664, 0.5);
  near(at(4.5).angularSpeed / rpm, 5109, 0.5);
  expect(speeds.filter((speed) => speed.major).map((speed) => speed.order)).toEqual([3, 6]);
  const three = criticalSpeeds({ ...input, cylinders: 3 });
  expect(three.filter((speed) => speed.major).map((speed) => speed.order)).toEqual([1.5, 3, 4.5, 6]);
});

test("boundary", () => {
  refuses(() => criticalSpeeds({ ...input, cylinders: 0 }), "cylinders");
  refuses(() => criticalSpeeds({ ...input, greatestOrder: 0.25 }), "greatestOrder");
  refuses(() => criticalSpeeds({ ...input, greatestOrder: 0 }), "greatestOrder");
  refuses(() => criticalSpeeds({ ...input, greatestOrder: 1000.5 }), "greatestOrder");
  refuses(() => criticalSpeeds({ ...input, angularFrequency: 0 }), "angularFrequency");
  refusesNonFinite(criticalSpeeds, input);
});

const orders = fc.integer({ min: 1, max: 40 }).map((halves) => halves / 2);
property.prop([between(100, 9000), orders])("speed times order is the natural frequency", (f, order) => {
  const speeds = criticalSpeeds({ angularFrequency: f, cylinders: 4, greatestOrder: order });
  expect(speeds).toHaveLength(2 * order);
  expect(speeds.at(-1)!.order).toBe(order);
  for (const speed of speeds) nearly(speed.angularSpeed * speed.order, f, 1e-14);
});

test("within a range, by hand: 22992 rpm over 3.5 to 12 from 1900 to 7600 rpm, three of them majors of a six", () => {
  const range = { ...input, greatestOrder: 12, lowest: 1900 * rpm, highest: 7600 * rpm };
  const within = criticalsWithin(range);
  expect(within.map(({ order }) => order)).toEqual(Array.from({ length: 18 }, (_, i) => 12 - i / 2));
  expect(within.filter(({ major }) => major).map(({ order }) => order)).toEqual([12, 9, 6]);
  refuses(() => criticalsWithin({ ...range, lowest: 0 }), "lowest");
  refuses(() => criticalsWithin({ ...range, highest: 1800 * rpm }), "highest");
  refusesNonFinite(criticalsWithin, range);
});

property.prop([between(500, 9000), orders, between(50, 500), between(0, 500)])(
  "within a range: those, and only those, whose speed lies in it, rising",
  (angularFrequency, greatestOrder, lowest, wide) => {
    const all = { angularFrequency, cylinders: 4, greatestOrder };
    const within = criticalsWithin({ ...all, lowest, highest: lowest + wide });
    const speeds = within.map(({ angularSpeed }) => angularSpeed);
    expect(speeds).toEqual([...speeds].sort((a, b) => a - b));
    const inside = (speed: number) => speed >= lowest && speed <= lowest + wide;
    expect(speeds).toHaveLength(criticalSpeeds(all).filter((one) => inside(one.angularSpeed)).length);
    expect(speeds.every(inside)).toBe(true);
  },
);
