import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near } from "../check/support.test-support.ts";
import { tableCurve } from "./tableCurve.ts";

const places = [0, 0.5, 1.5, 2, 3] as const;

property.prop([between(0, 3)])("a straight line stays straight, a parabola nearly itself", (at) => {
  near(
    tableCurve(
      places,
      places.map((place) => 2 - 3 * place),
      at,
    ),
    2 - 3 * at,
    1e-12,
  );
  near(
    tableCurve(
      places,
      places.map((place) => (place + 1) ** 2),
      at,
    ),
    (at + 1) ** 2,
    1e-12,
  );
});

test("runs through its points, never above the higher or below the lower neighbour, and stops at its ends", () => {
  const values = [0, 0, 1, 1, 5];
  for (const [i, place] of places.entries()) near(tableCurve(places, values, place), values[i]!, 1e-12);
  for (let at = 0; at <= 0.5; at += 0.05) expect(tableCurve(places, values, at)).toBe(0);
  expect(tableCurve(places, values, 9)).toBe(5);
  expect(tableCurve(places, values, -9)).toBe(0);
});
