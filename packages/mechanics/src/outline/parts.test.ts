import { fc, test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, cranks, mm, near, nearly } from "../check/support.test-support.ts";
import { buildOutline } from "./buildOutline.ts";
import { CellList } from "./CellList.ts";
import { cellGroups } from "./cellGroups.ts";
import { cornerDistance } from "./cornerDistance.ts";
import { distanceAt } from "./distanceAt.ts";
import { halfOutline } from "./halfOutline.ts";
import { halves } from "./halves.test-support.ts";
import { leastOnInterval } from "./leastOnInterval.ts";
import { nearestAtAngle } from "./nearestAtAngle.ts";
import { curveU, curveV, outlineCurve, outlineCurves } from "./OutlineCurve.ts";
import { orderBy } from "./orderBy.ts";
import { pointToSegment } from "./pointToSegment.ts";
import { requireSimpleHalf } from "./requireSimpleHalf.ts";
import { rodFrame, rodPointInBlock } from "./rodFrame.ts";
import { sweepCells } from "./sweepCells.ts";

const places = between(-60 * mm, 60 * mm);
const angles = between(-7, 7);
const points = fc.record({ x: between(-0.2, 0.2), y: between(-0.2, 0.2) });
/** A nail somewhere about the crank: the plainest obstacle. */
const awayFrom = (nail: { x: number; y: number }) => (x: number, y: number) =>
  Math.hypot(x - nail.x, y - nail.y);

property.prop([places, places, places, places])(
  "a corner's distance grows with both ways, with the size, and never faster than the point moves",
  (dx, dy, ex, ey) => {
    const here = cornerDistance(dx, dy);
    expect(cornerDistance(dy, dx)).toBe(here);
    expect(cornerDistance(dx + Math.abs(ex), dy + Math.abs(ey))).toBeGreaterThanOrEqual(here - 1e-15);
    expect(Math.abs(cornerDistance(ex, ey) - here)).toBeLessThanOrEqual(Math.hypot(ex - dx, ey - dy) + 1e-15);
    nearly(cornerDistance(3 * dx, 3 * dy), 3 * here);
  },
);

const six = fc.tuple(places, places, places, places, places, places);
property.prop([six, between(0, 1), angles, places])(
  "a segment is as near as the nearest of its points, from either end and wherever both are moved",
  ([x, y, ax, ay, bx, by], share, turn, shift) => {
    const distance = pointToSegment(x, y, ax, ay, bx, by);
    nearly(pointToSegment(x, y, bx, by, ax, ay), distance, 1e-9);
    expect(distance).toBeLessThanOrEqual(
      Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay)) + 1e-15,
    );
    const [sin, cos] = [Math.sin(turn), Math.cos(turn)];
    const moved = (px: number, py: number) => [px * cos - py * sin + shift, px * sin + py * cos] as const;
    const all = [...moved(x, y), ...moved(ax, ay), ...moved(bx, by)] as const;
    near(pointToSegment(...all), distance, 1e-12);
    const least = leastOnInterval((t) => Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay)), 0, 1, 8);
    near(least.value, distance, 1e-9);
  },
);

property.prop([between(-2, 2), between(-1, 0), between(0.1, 2), between(2, 40)])(
  "the least of a parabola is at its foot or at the nearer end, and moves with it",
  (foot, from, width, parts) => {
    const [to, count] = [from + width, Math.round(parts)];
    const value = (at: number) => (at - foot) ** 2;
    const found = leastOnInterval(value, from, to, count);
    near(found.at, Math.min(to, Math.max(from, foot)), 1e-5 * width);
    expect(found.value).toBe(value(found.at));
    for (let i = 0; i <= count; i++)
      expect(found.value).toBeLessThanOrEqual(value(from + (i * width) / count) + 1e-15);
    const shifted = leastOnInterval((at) => value(at - 1), from + 1, to + 1, count);
    near(shifted.at, found.at + 1, 1e-5 * width);
  },
);

property.prop([halves, between(0.3, 3)])(
  "half an outline joins end to end, rounds its corner against both edges, and grows with its points",
  (vertices, scale) => {
    const half = halfOutline(vertices, "half");
    expect(half.length).toBe(vertices.length);
    const curves = half.map(({ element }) => outlineCurve(element));
    curves.slice(1).forEach((curve, i) => {
      const before = curves[i]!;
      near(Math.hypot(curveU(curve, 0) - curveU(before, 1), curveV(curve, 0) - curveV(before, 1)), 0, 1e-12);
    });
    const arc = half.flatMap(({ element }) => (element.kind === "arc" ? [element] : []))[0]!;
    const [a, corner, b] = vertices as unknown as { u: number; v: number; cornerRadius?: number }[];
    for (const end of [a!, b!])
      nearly(
        pointToSegment(arc.centre.u, arc.centre.v, end.u, end.v, corner!.u, corner!.v),
        corner!.cornerRadius!,
        1e-9,
      );
    const length = (all: typeof half) =>
      all.reduce((sum, { element }) => sum + outlineCurve(element).length, 0);
    const sharp = vertices.map(({ u, v }) => ({ u, v }));
    expect(length(half)).toBeLessThan(length(halfOutline(sharp, "half")));
    const scaled = vertices.map((one) =>
      Object.fromEntries(Object.entries(one).map(([key, value]) => [key, scale * value])),
    ) as typeof vertices;
    nearly(length(halfOutline(scaled, "half")), scale * length(half), 1e-9);
    expect(() => requireSimpleHalf(half, "half")).not.toThrow();
  },
);

property.prop([halves, between(0.05, 0.95), between(1 * mm, 10 * mm)])(
  "half an outline that runs back through itself, or across the axis, is refused",
  (vertices, share, depth) => {
    const sharp = vertices.map(({ u, v }) => ({ u, v }));
    const [first, second] = sharp as [{ u: number; v: number }, { u: number; v: number }];
    const on = { u: first.u, v: first.v + share * (second.v - first.v) };
    const back = [
      ...sharp,
      { u: 60 * mm, v: 80 * mm },
      { u: -80 * mm, v: 80 * mm },
      { u: -80 * mm, v: on.v },
    ];
    const through = [...back, { u: first.u + depth, v: on.v }];
    expect(() => requireSimpleHalf(halfOutline(back, "half"), "half")).not.toThrow();
    expect(() => requireSimpleHalf(halfOutline(through, "half"), "half")).toThrow(/does not cross itself/);
    // An arc that bulges over the axis, between two points of which neither lies beyond it.
    const [from, to] = [
      { u: -depth, v: depth / 100 },
      { u: -1.4 * depth, v: depth },
    ];
    const arcRadius = 0.501 * Math.hypot(to.u - from.u, to.v - from.v);
    const dipping = halfOutline([from, { ...to, arcRadius }, { u: depth, v: depth }], "half");
    expect(() => requireSimpleHalf(dipping, "half")).toThrow(/stays at v >= 0/);
  },
);

property.prop([halves, cranks, angles, between(0, 1), points])(
  "a distance along a curve is that of the point where the mechanism puts it",
  (vertices, crank, angle, t, nail) => {
    const frame = rodFrame(crank, angle);
    for (const curve of outlineCurves(buildOutline(vertices))) {
      const { x, y } = rodPointInBlock(frame, { u: curveU(curve, t), v: curveV(curve, t) });
      near(distanceAt(frame, curve, t, awayFrom(nail)), awayFrom(nail)(x, y), 1e-14);
    }
    const curve = outlineCurves(buildOutline(vertices))[0]!;
    near(
      distanceAt(frame, curve, t, (_x, _y, at) => at),
      angle,
      0,
    );
  },
);

property.prop([halves, cranks, angles, points], { numRuns: 20 })(
  "what is nearest at one angle is no farther than any sample, and hardly nearer than the nearest",
  (vertices, crank, angle, nail) => {
    const outline = buildOutline(vertices);
    const curves = outlineCurves(outline);
    const found = nearestAtAngle({ crank, outline, obstacle: [awayFrom(nail)] }, curves, angle);
    const frame = rodFrame(crank, angle);
    let least = Number.POSITIVE_INFINITY;
    for (const curve of curves)
      for (let i = 0; i <= 200; i++)
        least = Math.min(least, distanceAt(frame, curve, i / 200, awayFrom(nail)));
    expect(found.clearance).toBeLessThanOrEqual(least + 1e-12);
    near(found.clearance, least, 0.5 * mm);
    near(awayFrom(nail)(found.point.x, found.point.y), found.clearance, 1e-9);
  },
);

property.prop(
  [halves, cranks, points, fc.array(fc.tuple(between(0, 6.28), between(0, 1)), { minLength: 20 })],
  {
    numRuns: 15,
  },
)(
  "the cells of a sweep hold what is nearest: no sample is nearer than their bounds",
  (vertices, crank, nail, samples) => {
    const outline = buildOutline(vertices);
    const curves = outlineCurves(outline);
    const { cells, least } = sweepCells({ crank, outline, obstacle: [awayFrom(nail)] }, curves);
    expect(cells.length).toBeGreaterThan(0);
    const bound = Math.min(...Array.from({ length: cells.length }, (_, at) => cells.bound[at]!));
    expect(bound).toBeLessThan(least);
    // The finest cells are 1.5 thousandths of the mechanism: so far apart lie bound and value.
    expect(least - bound).toBeLessThan(2e-3 * (crank.throwRadius + 0.1));
    for (const [angle, t] of samples)
      for (const curve of curves)
        expect(distanceAt(rodFrame(crank, angle), curve, t, awayFrom(nail))).toBeGreaterThan(bound);
  },
);

property.prop([
  fc.array(
    between(-3, 3).map((value) => Math.round(value * 4) / 4),
    { maxLength: 60 },
  ),
  fc.nat(60),
])("an order is that of a stable sort, of as many numbers as are asked for", (numbers, most) => {
  const count = Math.min(most, numbers.length);
  const sorted = Array.from({ length: count }, (_, index) => index).sort(
    (a, b) => numbers[a]! - numbers[b]! || a - b,
  );
  expect([...orderBy(Float64Array.from(numbers), count).subarray(0, count)]).toEqual(sorted);
});

const cell = fc.record({
  curve: fc.nat(1),
  part: fc.nat(1),
  angle: between(0, 6.28),
  halfAngle: between(0.01, 0.2),
  t: between(0, 1),
  halfT: between(0.05, 0.5),
  bound: between(-1, 1),
});
property.prop([fc.array(cell, { minLength: 1, maxLength: 40 }), between(-0.5, 1)])(
  "groups hold every cell below a distance, and only such: each lies within one of its element and part",
  (made, below) => {
    const list = new CellList(4);
    for (const [frame, { curve, part, angle, halfAngle, t, halfT, bound }] of made.entries())
      list.push(curve, part, frame, angle, halfAngle, t, halfT, bound);
    const groups = cellGroups(list, below);
    const wanted = made.filter(({ bound }) => bound < below);
    expect(groups.length).toBeLessThanOrEqual(wanted.length);
    expect(groups.length > 0).toBe(wanted.length > 0);
    for (const one of wanted)
      expect(
        groups.some(
          (group) =>
            group.curve === one.curve &&
            group.part === one.part &&
            group.first <= one.angle &&
            one.angle <= group.last &&
            group.from <= one.t &&
            one.t <= group.to &&
            group.bound <= one.bound,
        ),
      ).toBe(true);
    for (const group of groups) expect(wanted.some(({ bound }) => bound === group.bound)).toBe(true);
  },
);
