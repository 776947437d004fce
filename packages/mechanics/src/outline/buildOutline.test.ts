import { describe, expect, test } from "vitest";
import { buildOutline } from "./buildOutline.ts";
import { curveU, curveV, outlineCurves } from "./OutlineCurve.ts";
import { outlineFarthestPoint } from "./outlineFarthestPoint.ts";
import type { OutlineVertex, RodOutline } from "./RodOutline.ts";

const box: readonly OutlineVertex[] = [
  { u: -0.03, v: 0 },
  { u: -0.03, v: 0.04 },
  { u: 0.02, v: 0.04 },
  { u: 0.02, v: 0.01 },
  { u: 0.06, v: 0.01 },
];

/** Area inside the closed outline, by a fine polygon; clockwise travel gives a positive area here. */
function area(outline: RodOutline): number {
  const points = outlineCurves(outline).flatMap((curve) =>
    Array.from({ length: 400 }, (_, i) => [curveU(curve, i / 400), curveV(curve, i / 400)] as const),
  );
  return points.reduce((sum, [u, v], i) => {
    const [nextU, nextV] = points[(i + 1) % points.length]!;
    return sum + ((v + nextV) / 2) * (nextU - u);
  }, 0);
}

describe("buildOutline", () => {
  test("closes both halves: area of a plain box with a beam", () => {
    expect(area(buildOutline(box))).toBeCloseTo(0.05 * 0.08 + 0.04 * 0.02, 12);
  });

  test("every element starts where the one before it ends", () => {
    const vertices = box.map((vertex, i) =>
      i === 1 || i === 3 ? { ...vertex, cornerRadius: 0.004 } : vertex,
    );
    const arched = vertices.map((vertex, i) => (i === 4 ? { ...vertex, arcRadius: 0.03 } : vertex));
    const other = box.map((vertex) => ({ ...vertex, v: vertex.v * 0.8 }));
    let joints = 0;
    for (const outline of [
      buildOutline(vertices),
      buildOutline(vertices, other),
      buildOutline(arched.map((vertex, i) => (i === 3 ? { u: vertex.u, v: vertex.v } : vertex))),
    ]) {
      const curves = outlineCurves(outline);
      for (const [i, curve] of curves.entries()) {
        const next = curves[(i + 1) % curves.length]!;
        expect(
          Math.hypot(curveU(curve, 1) - curveU(next, 0), curveV(curve, 1) - curveV(next, 0)),
        ).toBeLessThan(1e-15);
        joints++;
      }
    }
    expect(joints).toBeGreaterThan(25);
  });

  test("rounding a right-angled corner takes r^2 (1 - pi/4) off it on either side", () => {
    const rounded = box.map((vertex, i) => (i === 1 ? { ...vertex, cornerRadius: 0.01 } : vertex));
    const lost = 2 * 0.01 ** 2 * (1 - Math.PI / 4);
    expect(area(buildOutline(box)) - area(buildOutline(rounded))).toBeCloseTo(lost, 9);
  });

  test("rounding an inner corner adds the same", () => {
    const rounded = box.map((vertex, i) => (i === 3 ? { ...vertex, cornerRadius: 0.01 } : vertex));
    expect(area(buildOutline(rounded)) - area(buildOutline(box))).toBeCloseTo(
      2 * 0.01 ** 2 * (1 - Math.PI / 4),
      9,
    );
  });

  test("half a circle is one arc, listed in either direction", () => {
    const ends = [-0.03, 0.03] as const;
    for (const [from, to] of [ends, [ends[1], ends[0]]] as const) {
      const outline = buildOutline([
        { u: from, v: 0 },
        { u: to, v: 0, arcRadius: 0.03 },
      ]);
      expect(Math.abs(area(outline))).toBeCloseTo(Math.PI * 0.03 ** 2, 7);
      expect(outlineFarthestPoint(outline).radius).toBeCloseTo(0.03, 15);
    }
  });

  test.each<[string, readonly OutlineVertex[], RegExp]>([
    ["too few points", box.slice(0, 1), /vertices\.length: found 1/],
    ["v below 0", box.with(2, { u: 0.02, v: -0.001 }), /vertices\[2\]\.v: found -0\.001/],
    ["not a number", box.with(2, { u: Number.NaN, v: 0.04 }), /vertices\[2\]\.u: found NaN/],
    ["a point twice", box.with(2, box[1]!), /vertices\[2\]\.u/],
    [
      "arc below half the chord",
      box.with(2, { ...box[2]!, arcRadius: 0.0249 }),
      /vertices\[2\]\.arcRadius.*0\.025/,
    ],
    ["arc to the first point", box.with(0, { ...box[0]!, arcRadius: 1 }), /vertices\[0\]\.arcRadius/],
    [
      "corner too large for its edge",
      box.with(3, { ...box[3]!, cornerRadius: 0.0301 }),
      /vertices\[3\]\.cornerRadius/,
    ],
    [
      "two corners too large for the edge between",
      box.with(2, { ...box[2]!, cornerRadius: 0.016 }).with(3, { ...box[3]!, cornerRadius: 0.016 }),
      /vertices\[3\]\.cornerRadius/,
    ],
    [
      "corner beside an arc",
      box.with(2, { ...box[2]!, arcRadius: 0.1, cornerRadius: 0.001 }),
      /vertices\[2\]\.cornerRadius.*straight/,
    ],
    ["corner at an end", box.with(4, { ...box[4]!, cornerRadius: 0.001 }), /vertices\[4\]\.cornerRadius/],
    [
      "crossing itself",
      [
        { u: -0.03, v: 0 },
        { u: -0.03, v: 0.04 },
        { u: 0.02, v: 0.04 },
        { u: -0.05, v: 0.02 },
        { u: 0.06, v: 0.01 },
      ],
      /vertices\[3\]\.u.*vertices\[1\]/,
    ],
  ])("refuses %s", (_, vertices, message) => {
    expect(() => buildOutline(vertices)).toThrow(RangeError);
    expect(() => buildOutline(vertices)).toThrow(message);
  });

  test("names the other side in its messages", () => {
    expect(() => buildOutline(box, box.with(2, { u: 0.02, v: -1 }))).toThrow(/otherSide\[2\]\.v/);
  });
});
