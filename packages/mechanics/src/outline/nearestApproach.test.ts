import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { angles, between, cranks, mm } from "../check/support.test-support.ts";
import { boreHollow, cylinderObstacle } from "../clearance/rodToCylinderObstacle.ts";
import { oppositeObstacle } from "../clearance/rodToOppositeCylinder.ts";
import { railObstacle } from "../clearance/rodToRail.ts";
import { buildOutline } from "./buildOutline.ts";
import { halves } from "./halves.test-support.ts";
import { motionBoundsOf } from "./motionBoundsOf.ts";
import { nearestApproach } from "./nearestApproach.ts";
import { curveU, curveV, outlineCurves } from "./OutlineCurve.ts";
import { rodFrame, rodPointInBlock } from "./rodFrame.ts";
import { DISTANCE, PLACES, STEEP_X, STEEP_Y, writeDistance, X, Y } from "./SteepDistance.ts";
import { sweepBySamples } from "./sweepBySamples.ts";
import { nearestOf, type RodSweep } from "./sweepOutline.ts";

const notches = fc.option(
  fc.record({
    depth: between(0, 8 * mm),
    height: between(0, 15 * mm),
    width: between(0, 60 * mm),
    cornerRadius: between(0, 3 * mm),
  }),
  { nil: undefined },
);
const bores = fc.record({
  bore: between(76 * mm, 110 * mm),
  cylinderAxisOffset: between(-1 * mm, 1 * mm),
  cylinderBottomHeight: between(60 * mm, 110 * mm),
  bigEndWidth: between(18 * mm, 30 * mm),
  planeOffset: between(-2 * mm, 6 * mm),
});
type Passed = Pick<RodSweep, "obstacle"> & { readonly hollow: 0 | ((within: number) => number) };
const cylinders: fc.Arbitrary<Passed> = fc.tuple(bores, notches).map(([geometry, notch]) => ({
  obstacle: cylinderObstacle({ ...geometry, notch }),
  hollow: boreHollow(geometry),
}));
const opposites: fc.Arbitrary<Passed> = fc
  .tuple(bores, between(0.3, Math.PI), between(0, 20 * mm))
  .filter(([{ bore, bigEndWidth, planeOffset }, , stagger]) => {
    return stagger + Math.abs(planeOffset) + bigEndWidth / 2 < 0.45 * bore;
  })
  .map(([geometry, bankAngle, bankStagger]) => oppositeObstacle({ ...geometry, bankAngle, bankStagger }));
const rails: fc.Arbitrary<Passed> = fc
  .record({
    railHalfWidth: between(85 * mm, 140 * mm),
    railHeight: between(-90 * mm, 0),
    bankAngle: between(0, 2),
  })
  .map((geometry) => ({ obstacle: railObstacle(geometry), hollow: 0 as const }));
const bars: fc.Arbitrary<Passed> = fc
  .record({ x: between(-0.2, 0.2), y: between(-0.2, 0.2), radius: between(0, 30 * mm) })
  .map(({ x, y, radius }) => ({
    obstacle: [(px: number, py: number) => Math.hypot(px - x, py - y) - radius],
    hollow: 0 as const,
  }));

let compared = 0;
property.prop([halves, cranks, fc.oneof(cylinders, opposites, rails, bars)], { numRuns: 60 })(
  "the nearest approach is that of the samples, never higher, and lies where it is said to lie",
  (vertices, crank, { obstacle, hollow }) => {
    const outline = buildOutline(vertices);
    const sweep = { crank, outline, obstacle };
    const curves = outlineCurves(outline);
    const found = nearestApproach(sweep, curves, hollow);
    const sampled = sweepBySamples(sweep).clearance;
    if (found === undefined) return;
    compared += 1;
    // The samples may miss a second minimum by a tenth of a micrometre.
    expect(found.clearance - sampled).toBeLessThanOrEqual(3e-9);
    expect(found.clearance - sampled).toBeGreaterThanOrEqual(-1e-7);
    const { point } = nearestOf(sweep, curves[found.curve]!, found);
    const there = Math.min(...obstacle.map((distance) => distance(point.x, point.y, found.angle)));
    expect(Math.abs(there - found.clearance)).toBeLessThanOrEqual(1e-12);
  },
);

test("most of them were found without samples", () => {
  expect(compared).toBeGreaterThanOrEqual(45);
});

const shares = between(0.001, 0.999);
property.prop([halves, cranks, angles, shares])(
  "no point of a curve moves farther, nor turns aside more, than its bounds say",
  (vertices, crank, angle, t) => {
    const [da, dt] = [1e-4, 1e-4];
    let [turned, met] = [0, 0];
    for (const curve of outlineCurves(buildOutline(vertices))) {
      const at = (i: number, j: number) => {
        const u = curveU(curve, t + j * dt);
        return rodPointInBlock(rodFrame(crank, angle + i * da), { u, v: curveV(curve, t + j * dt) });
      };
      const size = (weights: readonly (readonly [i: number, j: number, weight: number])[]) => {
        let [x, y] = [0, 0];
        for (const [i, j, weight] of weights) {
          const point = at(i, j);
          x += weight * point.x;
          y += weight * point.y;
        }
        return Math.hypot(x, y);
      };
      const { perRadian, bendOfTurn, bendOfBoth, bendOfCurve } = motionBoundsOf(crank, [curve])[0]!;
      const first = size([
        [1, 0, 1],
        [-1, 0, -1],
      ]);
      expect(first / (2 * da)).toBeLessThanOrEqual(perRadian * (1 + 1e-6));
      const second = size([
        [1, 0, 1],
        [0, 0, -2],
        [-1, 0, 1],
      ]);
      expect(second / da ** 2).toBeLessThanOrEqual(bendOfTurn * (1 + 1e-6) + 1e-7);
      const mixed = size([
        [1, 1, 1],
        [1, -1, -1],
        [-1, 1, -1],
        [-1, -1, 1],
      ]);
      expect(mixed / (4 * da * dt)).toBeLessThanOrEqual(bendOfBoth * (1 + 1e-6) + 1e-7);
      const along = size([
        [0, 1, 1],
        [0, 0, -2],
        [0, -1, 1],
      ]);
      expect(along / dt ** 2).toBeLessThanOrEqual(bendOfCurve * (1 + 1e-6) + 1e-7);
      turned = Math.max(turned, second / da ** 2 / bendOfTurn);
      met += 1;
    }
    // The bounds are of use: no ten times what happens.
    expect(turned).toBeGreaterThan(0.1);
    expect(met).toBeGreaterThan(0);
  },
);

const places = fc.record({ x: between(-45 * mm, 45 * mm), y: between(40 * mm, 120 * mm) });
property.prop([bores, notches, places, angles, between(0.01 * mm, 6 * mm)])(
  "the distance to a cylinder bends down by no more than its bore is hollow",
  (geometry, notch, { x, y }, lean, way) => {
    const hollow = boreHollow(geometry);
    const [dx, dy] = [way * Math.sin(lean), way * Math.cos(lean)];
    for (const distance of cylinderObstacle({ ...geometry, notch })) {
      const [before, here, after] = [-1, 0, 1].map((k) => distance(x + k * dx, y + k * dy)) as [
        number,
        number,
        number,
      ];
      const most = hollow(Math.max(before, here, after));
      expect(before + after - 2 * here).toBeGreaterThanOrEqual(-most * way ** 2 - 1e-12);
    }
    // Deeper in the bore it is less hollow.
    expect(hollow(0)).toBeLessThanOrEqual(hollow(geometry.bore / 4));
  },
);

property.prop([fc.oneof(cylinders, opposites, rails, bars), between(-0.15, 0.15), between(-0.15, 0.15)], {
  numRuns: 300,
})(
  "what writes a distance writes that distance, and a slope below which it nowhere falls but by its hollow",
  (passed, x, y) => {
    for (const distance of passed.obstacle) {
      const n = new Float64Array(PLACES);
      n[X] = x;
      n[Y] = y;
      writeDistance(distance)(n);
      const [value, steepX, steepY] = [n[DISTANCE]!, n[STEEP_X]!, n[STEEP_Y]!];
      expect(value).toBe(distance(x, y, 0));
      expect([n[X], n[Y]]).toEqual([x, y]);
      expect(Math.hypot(steepX, steepY)).toBeLessThanOrEqual(1 + 1e-6);
      for (let way = 0; way < 2 * Math.PI; way += Math.PI / 8) {
        for (const far of [1e-5, 1e-3, 1e-2]) {
          const [dx, dy] = [far * Math.cos(way), far * Math.sin(way)];
          const hollow = passed.hollow === 0 ? 0 : passed.hollow(value + far);
          const line = value + steepX * dx + steepY * dy;
          // A slope that is taken by differences is right to a millionth.
          expect(distance(x + dx, y + dy, 0)).toBeGreaterThanOrEqual(
            line - 0.5 * hollow * far * far - 1e-6 * far,
          );
        }
      }
    }
  },
);
