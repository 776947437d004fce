import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, nearly, refuses, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { criticalSpeeds } from "./criticalSpeeds.ts";

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
