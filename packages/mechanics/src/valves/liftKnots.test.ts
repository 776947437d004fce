import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, nearly } from "../check/support.test-support.ts";
import { limitedSlope, windowCurvature } from "./liftKnots.ts";

const slopeOf = (lifts: readonly [number, number, number]) => {
  const [a, b, c] = lifts.map((lift, i) => ({ angle: i, lift }));
  return limitedSlope(a!, b!, c!);
};

test("slopes: that of the parabola, none at a turn, three chords at most", () => {
  expect(slopeOf([0, 1, 4])).toBe(2);
  expect(slopeOf([0, 1, 0])).toBe(0);
  expect(slopeOf([0, 0, 5])).toBe(0);
  expect(slopeOf([0, 1, 101])).toBe(3);
  expect(slopeOf([101, 1, 0])).toBe(-3);
});

property.prop([
  between(-1, 1),
  between(-1, 1),
  between(-1, 1),
  between(0.1, 2),
  between(0.1, 2),
  between(0.2, 4),
])(
  "a slope goes with its chords, at most three times the flatter, and turns with the table",
  (a, b, c, left, right, scale) => {
    const [before, here, after] = [
      { angle: -left, lift: a },
      { angle: 0, lift: b },
      { angle: right, lift: c },
    ];
    const slope = limitedSlope(before, here, after);
    const chords = [(b - a) / left, (c - b) / right];
    if (chords[0]! * chords[1]! <= 0) expect(slope).toBe(0);
    else {
      expect(Math.sign(slope)).toBe(Math.sign(chords[0]!));
      expect(Math.abs(slope)).toBeLessThanOrEqual(3 * Math.min(...chords.map(Math.abs)) * (1 + 1e-12));
    }
    const turned = ({ angle, lift }: typeof here) => ({ angle: -angle, lift });
    near(limitedSlope(turned(after), turned(here), turned(before)), -slope, 1e-12);
    const higher = ({ angle, lift }: typeof here) => ({ angle, lift: scale * lift });
    near(limitedSlope(higher(before), higher(here), higher(after)), scale * slope, 1e-10);
  },
);

test("the window takes the samples within it and always the neighbours", () => {
  // The fourth power seen through 3 and through 5 samples a unit apart: 2 and 62 / 7.
  const knot = (i: number) => ({ angle: i, lift: i ** 4 });
  nearly(windowCurvature(knot, 0, 99, 0), 2, 1e-12);
  nearly(windowCurvature(knot, 0, 99, 1.99), 2, 1e-12);
  nearly(windowCurvature(knot, 0, 99, 2), 62 / 7, 1e-12);
});

property.prop([between(-1, 1), between(-1, 1), between(-1, 1), between(0, 5)])(
  "a parabola has its own curvature in any window",
  (a, b, c, window) => {
    const knot = (i: number) => {
      const angle = i + 0.3 * Math.sin(i);
      return { angle, lift: a + b * angle + c * angle * angle };
    };
    near(windowCurvature(knot, 3, 99, window), 2 * c, 1e-10);
  },
);
