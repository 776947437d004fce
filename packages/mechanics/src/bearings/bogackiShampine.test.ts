import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near } from "../check/support.test-support.ts";
import { bogackiShampine, factorFor, type PlaneSlope, requireStep } from "./bogackiShampine.ts";

const circle: PlaneSlope = (_at, x, y, into) => {
  into[0] = -y;
  into[1] = x;
};
const turn = { from: 0, to: 2 * Math.PI, x: 1, y: 0 };

test("a circle closes, and an eighth of the step brings a thousandth of the error or so: third order", () => {
  const missed = (widest: number) => {
    const [x, y] = bogackiShampine(circle, { ...turn, tolerance: 1, widest });
    return Math.hypot(x - 1, y);
  };
  const ratio = missed(0.2) / missed(0.025);
  expect(ratio).toBeGreaterThan(300);
  expect(ratio).toBeLessThan(900);
});

test("steps fit themselves to the tolerance", () => {
  const [x, y] = bogackiShampine(circle, { ...turn, tolerance: 1e-9, widest: 6 });
  near(x, 1, 1e-6);
  near(y, 0, 1e-6);
});

test("it follows a slope that depends on the place, and reports points on the path in order", () => {
  const places: number[] = [];
  const [x, y] = bogackiShampine(
    (at, _x, _y, into) => {
      into[0] = Math.cos(at);
      into[1] = 2 * at;
    },
    { from: 1, to: 3, x: 0, y: 0, tolerance: 1e-8, widest: 0.5 },
    (at, atX, atY) => {
      places.push(at);
      near(atX, Math.sin(at) - Math.sin(1), 1e-5);
      near(atY, at ** 2 - 1, 1e-5);
    },
  );
  near(x, Math.sin(3) - Math.sin(1), 1e-6);
  near(y, 8, 1e-6);
  expect(places).toEqual([...places].sort((a, b) => a - b));
  expect(places.at(-1)).toBe(3);
});

test("it gives up at a wall", () => {
  const wall: PlaneSlope = (at, _x, _y, into) => {
    into[0] = at < 0.5 ? 0 : Number.NaN;
    into[1] = 0;
  };
  expect(() => bogackiShampine(wall, { ...turn, tolerance: 1e-6, widest: 0.1 })).toThrow(RangeError);
});

property.prop([between(-9, 6), between(-9, 6)], { numRuns: 100 })(
  "the greater its error, the less the next step grows, within bounds",
  (one, other) => {
    const [less, more] = [10 ** Math.min(one, other), 10 ** Math.max(one, other)];
    expect(factorFor(less)).toBeGreaterThanOrEqual(factorFor(more));
    for (const share of [less, more]) {
      expect(factorFor(share)).toBeLessThanOrEqual(3);
      expect(factorFor(share)).toBeGreaterThanOrEqual(factorFor(Number.NaN));
    }
    if (less > 1) expect(factorFor(less)).toBeLessThan(1);
  },
);

property.prop([between(1e-3, 1e3), between(-12, 0)], { numRuns: 100 })(
  "steps of less than a thousand millionth of the way are refused",
  (interval, power) => {
    const step = interval * 10 ** power;
    if (power < -9.001) expect(() => requireStep(step, interval)).toThrow(RangeError);
    if (power > -8.999) expect(() => requireStep(step, interval)).not.toThrow();
  },
);
