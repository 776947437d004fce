import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { buildOutline } from "../outline/buildOutline.ts";
import { outlineFarthestPoint } from "../outline/outlineFarthestPoint.ts";
import { rodToCylinderBottom } from "./rodToCylinderBottom.ts";
import { boreHalfChord, chordClearance } from "./rodToCylinderChordClearance.ts";
import type { RodNotch, RodToCylinder } from "./rodToCylinderObstacle.ts";
import { screeningDisc } from "./rodToCylinderScreeningDisc.ts";

const mm = 1e-3;
/** Invented outline with rounded corners and an arc over the cap bolt. */
const outlineOf = (scale: number, count: number) =>
  buildOutline(
    [
      { u: -32 * scale, v: 0 },
      { u: -32 * scale, v: 15 * scale, cornerRadius: 6 * scale },
      { u: -23 * scale, v: 36 * scale, cornerRadius: 2 * scale },
      { u: 8 * scale, v: 38 * scale },
      { u: 30 * scale, v: 15 * scale, arcRadius: 60 * scale },
      { u: 60 * scale, v: 10 * scale },
    ].slice(0, count),
  );
const base = { bore: 86 * mm, planeOffset: 0.3 * mm };

test("where the disc is clear in the plane of the side face, its clearance still is that in space", () => {
  // A bore so high that the plane form is positive.
  const disc = {
    ...base,
    cylinderAxisOffset: 0,
    bigEndWidth: 21.8 * mm,
    throwRadius: 47 * mm,
    bigEndRadius: 44.52 * mm,
    cylinderBottomHeight: 90 * mm,
  };
  const inPlane = Math.hypot(boreHalfChord(disc), 90 * mm) - 47 * mm - 44.52 * mm;
  const inSpace = screeningDisc(disc);
  expect(inSpace).toBeGreaterThan(0);
  expect(inSpace).toBeLessThan(inPlane - 1e-6);
});

describe("properties", () => {
  const geometry = fc
    .record({
      size: fc.double({ min: 0.6, max: 1.3, noNaN: true }),
      throwRadius: fc.double({ min: 0.035, max: 0.055, noNaN: true }),
      pinLineOffset: fc.double({ min: -0.003, max: 0.003, noNaN: true }),
      cylinderAxisOffset: fc.double({ min: -0.003, max: 0.003, noNaN: true }),
      cylinderBottomHeight: fc.double({ min: 0.055, max: 0.095, noNaN: true }),
      bigEndWidth: fc.double({ min: 0.016, max: 0.03, noNaN: true }),
      depth: fc.double({ min: 0, max: 0.005, noNaN: true }),
      height: fc.double({ min: 0, max: 0.012, noNaN: true }),
      width: fc.double({ min: 0, max: 0.04, noNaN: true }),
    })
    .map(
      ({
        size,
        throwRadius,
        pinLineOffset,
        depth,
        height,
        width,
        ...rest
      }): RodToCylinder & { readonly notch: RodNotch } => ({
        ...base,
        ...rest,
        crank: { throwRadius, rodLength: 0.145, pinLineOffset },
        outline: outlineOf(size * mm, 6),
        notch: { depth, height, width },
      }),
    );
  const runs = { numRuns: 40, seed: 4711 };
  const clearance = (of: RodToCylinder): number => rodToCylinderBottom(of).clearance;
  const slack = 2e-9;

  property.prop([geometry], runs)("mirrored geometry has the same clearance", (one) => {
    const crank = { ...one.crank, pinLineOffset: -one.crank.pinLineOffset };
    const mirrored = {
      ...one,
      crank,
      cylinderAxisOffset: -one.cylinderAxisOffset,
      planeOffset: -one.planeOffset,
    };
    expect(Math.abs(clearance(mirrored) - clearance(one))).toBeLessThan(slack);
  });
  property.prop([geometry, fc.double({ min: 0.1, max: 20, noNaN: true })], runs)(
    "lengths scale",
    (one, k) => {
      const { crank, outline } = one;
      const u = (p: { u: number; v: number }) => ({ u: p.u * k, v: p.v * k });
      const scaled: RodToCylinder = {
        crank: {
          throwRadius: crank.throwRadius * k,
          rodLength: crank.rodLength * k,
          pinLineOffset: crank.pinLineOffset * k,
        },
        outline: {
          elements: outline.elements.map((element) =>
            element.kind === "segment"
              ? { ...element, from: u(element.from), to: u(element.to) }
              : { ...element, centre: u(element.centre), radius: element.radius * k },
          ),
        },
        bore: one.bore * k,
        cylinderAxisOffset: one.cylinderAxisOffset * k,
        cylinderBottomHeight: one.cylinderBottomHeight * k,
        bigEndWidth: one.bigEndWidth * k,
        planeOffset: one.planeOffset * k,
        notch: { depth: one.notch.depth * k, height: one.notch.height * k, width: one.notch.width * k },
      };
      expect(Math.abs(clearance(scaled) / k - clearance(one))).toBeLessThan(slack);
    },
  );
  const more = fc.double({ min: 0, max: 0.004, noNaN: true });
  property.prop([geometry, more], runs)("a higher bottom never lowers it", (one, by) => {
    const higher = { ...one, cylinderBottomHeight: one.cylinderBottomHeight + by };
    expect(clearance(higher)).toBeGreaterThanOrEqual(clearance(one) - slack);
  });
  property.prop([geometry, more], runs)("a wider rod never raises it", (one, by) => {
    expect(clearance({ ...one, bigEndWidth: one.bigEndWidth + by })).toBeLessThanOrEqual(
      clearance(one) + slack,
    );
  });
  property.prop([geometry, more, fc.constantFrom("depth", "height", "width" as const)], runs)(
    "a larger notch never lowers it",
    (one, by, size) => {
      const larger = { ...one, notch: { ...one.notch, [size]: one.notch[size] + by } };
      expect(clearance(larger)).toBeGreaterThanOrEqual(clearance(one) - slack);
    },
  );
  property.prop([geometry], runs)(
    "the hand form is never below the exact value while the rod is free",
    (one) => {
      const { notch: _, ...plain } = one;
      const exact = clearance(plain);
      if (exact > 0) expect(chordClearance(plain).clearance).toBeGreaterThanOrEqual(exact - slack);
      else expect(chordClearance(plain).clearance).toBeLessThanOrEqual(slack);
    },
  );
  property.prop([geometry], runs)("the screening disc is never above the big end's clearance", (one) => {
    const { notch: _, ...plain } = { ...one, cylinderBottomHeight: one.cylinderBottomHeight + 0.03 };
    const bigEnd = { ...plain, outline: outlineOf(mm, 5) };
    const bigEndRadius = outlineFarthestPoint(bigEnd.outline).radius;
    const disc = screeningDisc({ ...plain, throwRadius: plain.crank.throwRadius, bigEndRadius });
    if (disc > 0) expect(disc).toBeLessThanOrEqual(clearance(bigEnd) + slack);
    else expect(disc).toBeLessThanOrEqual(0);
  });
});
