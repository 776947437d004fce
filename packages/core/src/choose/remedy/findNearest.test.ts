import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { finish } from "../../derive/Steps.ts";
import { findNearest, type Rungs } from "./findNearest.ts";

/** A finding that holds where a curve is not negative, asked for through a curve that lies a little beside it. */
function rungsOf(count: number, curve: (rung: number) => number, beside = 0) {
  const asked = { lean: 0, holds: 0 };
  const rungs: Rungs = {
    count,
    lean: (rung) => {
      asked.lean += 1;
      return curve(rung) + beside;
    },
    *closely(rung) {
      asked.holds += 1;
      yield;
      return curve(rung);
    },
    *holds(rung) {
      asked.holds += 1;
      yield;
      return rung > 0 && curve(rung) >= 0;
    },
  };
  return { rungs, asked };
}

const firstOf = (count: number, curve: (rung: number) => number): number | undefined =>
  Array.from({ length: count }, (_, index) => index + 1).find((rung) => curve(rung) >= 0);

const shape = fc.record({
  count: fc.integer({ min: 0, max: 3000 }),
  from: fc.double({ min: 0.5, max: 3500, noNaN: true }),
  slope: fc.double({ min: 0.01, max: 10, noNaN: true }),
});

describe("the nearest rung", () => {
  test.prop([shape, fc.double({ min: -0.3, max: 0.3, noNaN: true })], { numRuns: 500 })(
    "is found where it holds from a place on, whichever side the short way errs to",
    ({ count, from, slope }, error) => {
      const curve = (rung: number) => slope * (rung - from);
      const { rungs, asked } = rungsOf(count, curve, error * slope * from);
      const { rung } = finish(findNearest(rungs));
      const wanted = firstOf(count, curve);
      // Beyond the last rung the short way may find nothing to go by, but never something that does not hold.
      if (error >= 0 || from * (1 - error) < count) expect(rung).toBe(wanted);
      else if (rung !== undefined) expect(rung).toBe(wanted);
      expect(asked.lean).toBeLessThan(60);
      expect(asked.holds).toBeLessThan(60);
    },
  );
  test.prop([shape, fc.integer({ min: 1, max: 200 }), fc.double({ min: 0.2, max: 5, noNaN: true })], {
    numRuns: 500,
  })("is found in a window, however narrow", ({ count, from, slope }, width, ratio) => {
    const middle = from + width / 2;
    const curve = (rung: number) =>
      rung < middle ? slope * (rung - from) : slope * (middle - from) - ratio * slope * (rung - middle);
    const { rungs } = rungsOf(count, curve);
    expect(finish(findNearest(rungs)).rung).toBe(firstOf(count, curve));
  });
  it("is none where it holds nowhere, and then says where it comes nearest", () => {
    const { rungs, asked } = rungsOf(1000, (rung) => -1 - Math.abs(rung - 300));
    expect(finish(findNearest(rungs))).toEqual({ best: 300 });
    expect(asked.holds).toBe(0);
    expect(finish(findNearest(rungsOf(0, () => -1).rungs))).toEqual({ best: 0 });
  });
  it("goes on where what seemed to hold does not", () => {
    const { rungs } = rungsOf(4000, (rung) => rung - 2500, 2450);
    expect(finish(findNearest(rungs)).rung).toBe(2500);
  });
});
