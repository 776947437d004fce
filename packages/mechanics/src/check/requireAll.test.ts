import { describe, expect, test } from "vitest";
import {
  finite,
  notNegative,
  positive,
  requireAll,
  requireCounts,
  requireThat,
  share,
} from "./requireAll.ts";

describe("requireAll", () => {
  test("accepts the ends that belong to an interval", () => {
    expect(() => requireAll(share, { a: 0, b: 1 })).not.toThrow();
    expect(() => requireAll(notNegative, { a: 0 })).not.toThrow();
    expect(() => requireAll(finite, { a: -1e300 })).not.toThrow();
    expect(() => requireAll(positive, { a: Number.MIN_VALUE })).not.toThrow();
  });

  test("names the parameter, the value found and what was expected", () => {
    expect(() => requireAll(positive, { bore: 0.08, stroke: 0 })).toThrow(
      new RangeError("stroke: found 0, expected a finite number above 0"),
    );
    expect(() => requireAll({ atLeast: 0, below: 1 }, { eccentricity: 1 })).toThrow(
      new RangeError("eccentricity: found 1, expected a finite number at least 0 and below 1"),
    );
    expect(() => requireAll(share, { use: 1.01 })).toThrow("at least 0 and at most 1");
    expect(() => requireAll(finite, { angle: Number.NaN })).toThrow(
      "angle: found NaN, expected a finite number",
    );
  });

  test("refuses infinity in an interval without that end", () => {
    expect(() => requireAll(positive, { bore: Number.POSITIVE_INFINITY })).toThrow(RangeError);
    expect(() => requireAll(finite, { bore: Number.NEGATIVE_INFINITY })).toThrow(RangeError);
  });
});

test("requireThat throws only when the condition fails", () => {
  expect(() => requireThat(true, "a", 1, "b")).not.toThrow();
  expect(() => requireThat(false, "pinBore", 23, "below 22")).toThrow(
    new RangeError("pinBore: found 23, expected below 22"),
  );
});

test("requireCounts takes whole numbers from 1", () => {
  expect(() => requireCounts({ bolts: 1, rods: 2 })).not.toThrow();
  for (const bolts of [0, -1, 1.5, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => requireCounts({ bolts })).toThrow(`bolts: found ${bolts}, expected a whole number from 1`);
  }
});
