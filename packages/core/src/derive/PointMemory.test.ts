import { fc, test } from "@fast-check/vitest";
import { expect, it } from "vitest";
import { PointMemory } from "./PointMemory.ts";

const few = fc.constantFrom(0, 1, 1.5, -2, 1e-300, 0.1 + 0.2, 0.3);

test.prop([fc.array(fc.tuple(few, few, few), { minLength: 1, maxLength: 300 })])(
  "gives what was computed, and computes each point once",
  (points) => {
    const memory = new PointMemory(3);
    const weigh = ([a, b, c]: readonly [number, number, number]) => 7 * a + 5 * b + 3 * c;
    const shared = new Float64Array(3);
    let computed = 0;
    for (const point of points) {
      shared.set(point);
      const value = memory.at(shared, () => {
        computed += 1;
        shared.fill(9);
        return weigh(point);
      });
      expect(value).toBe(weigh(point));
    }
    expect(computed).toBe(new Set(points.map((point) => point.join())).size);
  },
);

it("keeps nothing of what was refused", () => {
  const memory = new PointMemory(1);
  const point = new Float64Array([2]);
  const refused = () => {
    throw new RangeError("cannot be");
  };
  expect(() => memory.at(point, refused)).toThrow(RangeError);
  expect(() => memory.at(point, refused)).toThrow(RangeError);
  expect(memory.at(point, () => 4)).toBe(4);
  expect(memory.at(point, refused)).toBe(4);
});
