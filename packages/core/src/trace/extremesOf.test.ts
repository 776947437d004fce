import { fc, test } from "@fast-check/vitest";
import { expect, it } from "vitest";
import { extremesOf } from "./extremesOf.ts";

const angles = Array.from({ length: 361 }, (_, degree) => (degree / 180) * Math.PI);
const ends = (of: (angle: number) => number) => extremesOf(angles, angles.map(of), of);
const phase = fc.double({ min: 0.1, max: 3, noNaN: true });

test.prop([phase, fc.double({ min: 0.1, max: 1e6, noNaN: true })])(
  "finds the top and the bottom of a wave between the samples",
  (shift, size) => {
    const { least, greatest } = ends((angle) => size * Math.cos(angle - shift));
    expect(greatest.value / size).toBeCloseTo(1, 9);
    expect(greatest.angle).toBeCloseTo(shift, 4);
    expect(least.value / size).toBeCloseTo(-1, 9);
    expect(least.angle).toBeCloseTo(shift + Math.PI, 4);
  },
);

test.prop([phase])("is not misled by a lower peak that lies on a sample", (shift) => {
  const peak = (angle: number, at: number) => 1 / (1 + ((angle - at) / 0.2) ** 2);
  const higher = (Math.floor((shift * 180) / Math.PI) + 0.5) * (Math.PI / 180);
  const lower = (300 * Math.PI) / 180;
  const of = (angle: number) => peak(angle, higher) + 0.999 * peak(angle, lower);
  expect(Math.max(...angles.map(of))).toBe(of(lower));
  expect(ends(of).greatest.angle).toBeCloseTo(higher, 2);
});

it("takes the ends of the range where the value only rises, and any angle where it stands still", () => {
  const rising = ends((angle) => angle);
  expect(rising.least.angle).toBeCloseTo(0, 6);
  expect(rising.greatest.angle).toBeCloseTo(2 * Math.PI, 6);
  const flat = ends(() => 7);
  expect([flat.least.value, flat.greatest.value]).toEqual([7, 7]);
});
