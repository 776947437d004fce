import { describe, expect, test } from "vitest";
import { buildOutline } from "../outline/buildOutline.ts";
import { outlineFarthestPoint } from "../outline/outlineFarthestPoint.ts";
import { rodFrame, rodPointInBlock } from "../outline/rodFrame.ts";
import { hillPoints } from "./rodSweep.test-support.ts";
import { rodToCylinderBottom } from "./rodToCylinderBottom.ts";
import { boreHalfChord, chordClearance } from "./rodToCylinderChordClearance.ts";
import { notchDepthNeeded, notchHeightNeeded } from "./rodToCylinderNotchNeeded.ts";
import type { RodToCylinder } from "./rodToCylinderObstacle.ts";
import { rodToCylinderProfile } from "./rodToCylinderProfile.ts";
import { screeningDisc } from "./rodToCylinderScreeningDisc.ts";
import { rodToPoint } from "./rodToPoint.ts";
import { rodToRail } from "./rodToRail.ts";

const mm = 1e-3;
const degree = Math.PI / 180;
const outlineOf = (points: readonly (readonly [number, number])[], scale = mm) =>
  buildOutline(points.map(([u, v]) => ({ u: u * scale, v: v * scale })));

/** Invented: the rod and block of a stroked inline four. */
const hill: RodToCylinder = {
  crank: { throwRadius: 47 * mm, rodLength: 144.5 * mm, pinLineOffset: -0.5 * mm },
  outline: outlineOf(hillPoints),
  bore: 86.5 * mm,
  cylinderAxisOffset: 0,
  cylinderBottomHeight: 71 * mm,
  bigEndWidth: 21.8 * mm,
  planeOffset: 0.3 * mm,
};
/** Depth at the rod's side face of a floor that lies so far beyond the bore at its middle. */
const fromMiddle = (depth: number) => depth + hill.bore / 2 - boreHalfChord(hill);
const notch = { depth: fromMiddle(2.5 * mm), height: 8 * mm, width: 40 * mm };

/** Invented: the rod and block of a large V8, its camshaft in the valley. */
const eight: RodToCylinder = {
  crank: { throwRadius: 46 * mm, rodLength: 155 * mm, pinLineOffset: 0 },
  outline: outlineOf([
    [-37, 0],
    [-37, 16],
    [-31, 27],
    [-25, 29],
    [-25, 40],
    [-8, 41],
    [8, 41],
    [17, 36],
    [32, 17],
    [62, 11],
  ]),
  bore: 104 * mm,
  cylinderAxisOffset: 0,
  cylinderBottomHeight: 87.9 * mm,
  bigEndWidth: 23.85 * mm,
  planeOffset: 0.4 * mm,
};

test("an invented eight", () => {
  const grid = 0.01 * mm;
  expect(Math.abs(rodToCylinderBottom(eight).clearance - 14.53 * mm)).toBeLessThan(grid);
  // The value to compare with leaves out the metal beside the notch, so the notch is wider than the bore.
  const wide = { ...eight, notch: { ...notch, width: 120 * mm } };
  expect(Math.abs(rodToCylinderBottom(wide).clearance - 17.75 * mm)).toBeLessThan(grid);
  expect(rodToCylinderBottom({ ...eight, notch }).clearance).toBeLessThan(15 * mm);
  expect(Math.abs(chordClearance(eight).clearance - 15.01 * mm)).toBeLessThan(grid);
  const { crank, outline } = eight;
  // Base circle 15 mm and lobe lift 10.4 mm.
  const lobe = { x: -78.9 * mm, y: 78.9 * mm, radius: 25.4 * mm };
  expect(Math.abs(rodToPoint({ crank, outline, ...lobe }).clearance - 1.05 * mm)).toBeLessThan(grid);
});

describe("an invented stroked four", () => {
  // The values to compare with were made on a grid of 0.25 degrees by 0.25 mm: 0.01 mm is their own error.
  const grid = 0.01 * mm;
  test("clearance, angle and nearest point", () => {
    const { clearance, crankAngle, point, rodPoint } = rodToCylinderBottom(hill);
    expect(Math.abs(clearance - 1.123 * mm)).toBeLessThan(grid);
    expect(Math.abs(crankAngle - 304.25 * degree)).toBeLessThan(0.5 * degree);
    expect(Math.hypot(point.x + 40.7 * mm, point.y - 70.6 * mm)).toBeLessThan(0.1 * mm);
    const again = rodPointInBlock(rodFrame(hill.crank, crankAngle), rodPoint);
    expect(Math.hypot(again.x - point.x, again.y - point.y)).toBeLessThan(1e-12);
  });
  test.each([
    ["2.5 x 8 mm notch", { notch }, 3.6116],
    ["2.5 x 1 mm notch", { notch: { ...notch, height: 1 * mm } }, 1.5316],
    ["2 x 7 mm notch", { notch: { ...notch, depth: fromMiddle(2 * mm), height: 7 * mm } }, 3.39],
    [
      "the same with 3 mm corners",
      { notch: { ...notch, depth: fromMiddle(2 * mm), height: 7 * mm, cornerRadius: 3 * mm } },
      2.99,
    ],
    ["stroke of 88 mm", { crank: { ...hill.crank, throwRadius: 44 * mm } }, 3.295],
    ["bottom 1 mm higher", { cylinderBottomHeight: 72 * mm }, 1.532],
  ])("%s", (_, change, expected) => {
    expect(Math.abs(rodToCylinderBottom({ ...hill, ...change }).clearance - expected * mm)).toBeLessThan(
      grid,
    );
  });
  test("hand form, screening disc, rail and jet", () => {
    const { crank, outline } = hill;
    expect(boreHalfChord(hill)).toBeCloseTo(41.7747 * mm, 7);
    expect(Math.abs(chordClearance(hill).clearance - 1.1573 * mm)).toBeLessThan(grid);
    const bigEndRadius = outlineFarthestPoint(outline, 0.2 * crank.rodLength).radius;
    expect(bigEndRadius).toBeCloseTo(44.522 * mm, 6);
    expect(screeningDisc({ ...hill, throwRadius: crank.throwRadius, bigEndRadius })).toBeCloseTo(
      -9.145 * mm,
      6,
    );
    const rail = rodToRail({ crank, outline, railHalfWidth: 97 * mm, railHeight: -58 * mm });
    expect(Math.abs(rail.clearance - 6.695 * mm)).toBeLessThan(grid);
    const jet = rodToPoint({ crank, outline, x: 50 * mm, y: 67 * mm, radius: 0 });
    expect(Math.abs(jet.clearance - 1.915 * mm)).toBeLessThan(grid);
    const round = rodToPoint({ crank, outline, x: 50 * mm, y: 67 * mm, radius: 1 * mm });
    expect(round.clearance).toBeCloseTo(jet.clearance - 1 * mm, 10);
  });
  test("a notch narrower than the rod gains nothing", () => {
    const narrow = { ...hill, notch: { ...notch, width: 22 * mm } };
    expect(rodToCylinderBottom(narrow).clearance).toBeCloseTo(rodToCylinderBottom(hill).clearance, 10);
    expect(notchDepthNeeded({ ...narrow, wanted: 1.5 * mm })).toBe(Number.POSITIVE_INFINITY);
    expect(notchHeightNeeded({ ...narrow, wanted: 1.5 * mm })).toBe(Number.POSITIVE_INFINITY);
  });
  test("notch needed gives the clearance wanted, and a micrometre less does not", () => {
    const wanted = 3 * mm;
    const depth = notchDepthNeeded({
      ...hill,
      notch: { height: 8 * mm, width: 40 * mm, cornerRadius: 2 * mm },
      wanted,
    });
    const height = notchHeightNeeded({
      ...hill,
      notch: { depth: 6 * mm, width: 40 * mm, cornerRadius: 2 * mm },
      wanted,
    });
    const cut = (d: number, h: number) =>
      rodToCylinderBottom({ ...hill, notch: { depth: d, height: h, width: 40 * mm, cornerRadius: 2 * mm } })
        .clearance;
    expect(cut(depth, 8 * mm)).toBeGreaterThanOrEqual(wanted);
    expect(depth).toBeGreaterThan(1 * mm);
    expect(cut(depth - 1e-6, 8 * mm)).toBeLessThan(wanted);
    expect(cut(6 * mm, height)).toBeGreaterThanOrEqual(wanted);
    expect(cut(6 * mm, height - 1e-6)).toBeLessThan(wanted);
    // Each was found with the other out of the way; together they still give it.
    const open = { width: 40 * mm, cornerRadius: 2 * mm };
    const needed = {
      depth: notchDepthNeeded({ ...hill, notch: { ...open, height: 80 * mm }, wanted }),
      height: notchHeightNeeded({ ...hill, notch: { ...open, depth: 80 * mm }, wanted }),
    };
    expect(cut(needed.depth, needed.height)).toBeGreaterThanOrEqual(wanted);
    expect(notchDepthNeeded({ ...hill, notch, wanted: 1 * mm })).toBe(0);
    const low = { height: 1 * mm, width: 40 * mm };
    expect(notchDepthNeeded({ ...hill, notch: low, wanted })).toBe(Number.POSITIVE_INFINITY);
  });
  test("the profile never goes below the least clearance and reaches it", () => {
    const { clearance } = rodToCylinderBottom(hill);
    const profile = rodToCylinderProfile(hill, 1440).map((nearest) => nearest.clearance);
    expect(profile.length).toBe(1440);
    expect(Math.min(...profile)).toBeGreaterThanOrEqual(clearance - 1e-9);
    expect(Math.min(...profile)).toBeLessThan(clearance + 1e-6);
  });
  test.each<[string, Partial<RodToCylinder>, RegExp]>([
    ["bore of 0", { bore: 0 }, /bore: found 0/],
    ["rod wider than the bore", { bigEndWidth: 86 * mm }, /bigEndWidth/],
    ["notch of negative depth", { notch: { ...notch, depth: -1 } }, /notch\.depth/],
    ["crank that cannot turn", { crank: { ...hill.crank, throwRadius: 0.2 } }, /rodLength/],
    ["bottom that is no number", { cylinderBottomHeight: Number.NaN }, /cylinderBottomHeight/],
  ])("refuses a %s", (_, change, message) => {
    expect(() => rodToCylinderBottom({ ...hill, ...change })).toThrow(message);
  });
});
