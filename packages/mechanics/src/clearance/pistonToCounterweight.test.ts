import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  between,
  centredCrank,
  cranks,
  deg,
  mm,
  near,
  nearly,
  offsetCrank,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { bottomDeadCentre } from "../kinematics/deadCentres.ts";
import { pinHeight } from "../kinematics/pinHeight.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { pistonToCounterweight } from "./pistonToCounterweight.ts";

const input = {
  crank: offsetCrank,
  lowestPointDepth: 19.5 * mm,
  lowestHalfWidth: 20 * mm,
  counterweightRadius: 74 * mm,
  counterweightHalfSpan: 60 * deg,
};

test("without an offset the middle of the edge meets the middle of the counterweight", () => {
  const found = pistonToCounterweight({ ...input, crank: centredCrank });
  nearly(found.clearance, 4 * mm, 1e-9);
  near(found.angle, Math.PI, 1e-4);
});

test("with an offset the edge still passes over the crank axis", () => {
  near(pistonToCounterweight(input).clearance / mm, 3.998718, 1e-6);
  // A single point on the pin line stands a little farther off.
  near(pistonToCounterweight({ ...input, lowestHalfWidth: 0 }).clearance / mm, 4.00032, 1e-5);
});

test("boundary", () => {
  refuses(() => pistonToCounterweight({ ...input, lowestPointDepth: 97.5 * mm }), "lowestPointDepth");
  refuses(() => pistonToCounterweight({ ...input, counterweightHalfSpan: 0 }), "counterweightHalfSpan");
  refuses(() => pistonToCounterweight({ ...input, gapHalfWidth: 21 * mm }), "gapHalfWidth");
  refusesNonFinite(pistonToCounterweight, { ...input, gapHalfWidth: 5 * mm });
});

/** Points and angles one by one, straight from the definition. */
function sampled(
  crank: SliderCrank,
  depth: number,
  halfWidth: number,
  radius: number,
  halfSpan: number,
  gap = 0,
): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= 1440; i++) {
    const theta = (i * Math.PI) / 720;
    const y = pinHeight(crank, theta) - depth;
    for (let k = -40; k <= 40; k++) {
      if (gap > 0 && k === 0) continue;
      const x = crank.pinLineOffset + (k / 40) * (halfWidth - gap) + Math.sign(k) * gap;
      const cosine = -(x * Math.sin(theta) + y * Math.cos(theta)) / Math.hypot(x, y);
      if (cosine >= Math.cos(halfSpan)) least = Math.min(least, Math.hypot(x, y) - radius);
    }
  }
  return least;
}

property.prop([cranks, between(0, 0.03), between(0.05, 1.5), between(0, 1)], { numRuns: 40 })(
  "agrees with points sampled from the definition",
  (crank, halfWidth, halfSpan, share) => {
    const depth = 0.4 * bottomDeadCentre(crank).height;
    const found = pistonToCounterweight({
      crank,
      lowestPointDepth: depth,
      lowestHalfWidth: halfWidth,
      counterweightRadius: 0.05,
      counterweightHalfSpan: halfSpan,
    });
    const coarse = sampled(crank, depth, halfWidth, 0.05, halfSpan);
    expect(found.clearance).toBeLessThanOrEqual(coarse + 1e-9);
    near(found.clearance, coarse, 20e-6);
    // The same edge with a gap in its middle, as the two sides of a skirt have.
    const gap = share * halfWidth;
    const sides = pistonToCounterweight({
      crank,
      lowestPointDepth: depth,
      lowestHalfWidth: halfWidth,
      gapHalfWidth: gap,
      counterweightRadius: 0.05,
      counterweightHalfSpan: halfSpan,
    });
    near(sides.clearance, sampled(crank, depth, halfWidth, 0.05, halfSpan, gap), 60e-6);
    expect(sides.clearance).toBeGreaterThanOrEqual(found.clearance - 1e-9);
  },
);
