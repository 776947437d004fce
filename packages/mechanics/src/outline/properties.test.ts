import { fc, test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { angles, between, cranks, mm, near, nearly, refuses } from "../check/support.test-support.ts";
import { pinHeight } from "../kinematics/pinHeight.ts";
import { rodAngle } from "../kinematics/rodAngle.ts";
import { buildOutline } from "./buildOutline.ts";
import { halves } from "./halves.test-support.ts";
import { curveU, curveV, outlineCurve, outlineCurves } from "./OutlineCurve.ts";
import { outlineFarthestPoint } from "./outlineFarthestPoint.ts";
import type { OutlineElement } from "./RodOutline.ts";
import { rodFrame, rodPointInBlock } from "./rodFrame.ts";
import { nearerThan, nearestOf, requireSweep, sweepOutline } from "./sweepOutline.ts";

const places = between(-60 * mm, 60 * mm);
const point = fc.record({ u: places, v: places });
const elements: fc.Arbitrary<OutlineElement> = fc.oneof(
  fc.record({ kind: fc.constant("segment" as const), from: point, to: point }),
  fc.record({
    kind: fc.constant("arc" as const),
    centre: point,
    radius: between(1 * mm, 40 * mm),
    startAngle: angles,
    sweepAngle: between(-3, 3),
  }),
);

property.prop([halves])("an outline closes, and is alike on both sides", (vertices) => {
  const curves = outlineCurves(buildOutline(vertices));
  const end = (i: number, t: number) => ({ u: curveU(curves[i]!, t), v: curveV(curves[i]!, t) });
  curves.forEach((_, i) => {
    const [here, next] = [end(i, 1), end((i + 1) % curves.length, 0)];
    near(Math.hypot(next.u - here.u, next.v - here.v), 0, 1e-12);
  });
  const other = outlineCurves(buildOutline(vertices, vertices));
  expect(other).toEqual(curves);
  const across = curves.reduce((sum, curve) => sum + curve.length * curveV(curve, 0.5), 0);
  near(across, 0, 1e-12);
});

property.prop([halves, between(0.3, 3)])("an outline grows with its points", (vertices, scale) => {
  const scaled = vertices.map(({ u, v, cornerRadius }) => ({
    u: scale * u,
    v: scale * v,
    ...(cornerRadius === undefined ? {} : { cornerRadius: scale * cornerRadius }),
  }));
  const length = (points: typeof vertices) =>
    outlineCurves(buildOutline(points)).reduce((sum, curve) => sum + curve.length, 0);
  nearly(length(scaled), scale * length(vertices), 1e-9);
  const farthest = (points: typeof vertices) => outlineFarthestPoint(buildOutline(points)).radius;
  nearly(farthest(scaled), scale * farthest(vertices), 1e-9);
});

property.prop([elements, between(0, 1), between(0, 1)])(
  "a point of a curve never moves farther than its length says, nor lies beyond its reach",
  (element, from, to) => {
    const curve = outlineCurve(element);
    const way = Math.hypot(curveU(curve, to) - curveU(curve, from), curveV(curve, to) - curveV(curve, from));
    expect(way).toBeLessThanOrEqual(curve.length * Math.abs(to - from) + 1e-15);
    expect(Math.hypot(curveU(curve, from), curveV(curve, from))).toBeLessThanOrEqual(curve.reach + 1e-15);
    // Its length is what many short chords add up to.
    let sum = 0;
    for (let i = 0; i < 400; i++) {
      const [a, b] = [i / 400, (i + 1) / 400];
      sum += Math.hypot(curveU(curve, b) - curveU(curve, a), curveV(curve, b) - curveV(curve, a));
    }
    nearly(sum, curve.length, 1e-5);
  },
);

property.prop([cranks, angles, point, point])(
  "a rod moves as a rigid body, its big end on the crankpin and its small end on the pin line",
  (crank, angle, one, two) => {
    const frame = rodFrame(crank, angle);
    near(Math.hypot(frame.x, frame.y), crank.throwRadius, 1e-15);
    near(frame.sin, Math.sin(rodAngle(crank, angle)), 1e-12);
    near(frame.cos, Math.cos(rodAngle(crank, angle)), 1e-12);
    const pin = rodPointInBlock(frame, { u: crank.rodLength, v: 0 });
    near(pin.x, crank.pinLineOffset, 1e-14);
    near(pin.y, pinHeight(crank, angle), 1e-14);
    const [a, b] = [rodPointInBlock(frame, one), rodPointInBlock(frame, two)];
    near(Math.hypot(b.x - a.x, b.y - a.y), Math.hypot(two.u - one.u, two.v - one.v), 1e-14);
  },
);

const lines = fc.record({ height: between(-150 * mm, 150 * mm), lean: angles });
property.prop([halves, cranks, lines], { numRuns: 10 })(
  "the least distance to a wall is found where it is said to be, and no sample is nearer",
  (vertices, crank, { height, lean }) => {
    const outline = buildOutline(vertices);
    const distance = (x: number, y: number) => x * Math.sin(lean) + y * Math.cos(lean) - height;
    const sweep = { crank, outline, obstacle: [distance] };
    expect(() => requireSweep(sweep)).not.toThrow();
    const { clearance, crankAngle, point: at, rodPoint } = sweepOutline(sweep);
    near(distance(at.x, at.y), clearance, 1e-9);
    const again = rodPointInBlock(rodFrame(crank, crankAngle), rodPoint);
    near(Math.hypot(again.x - at.x, again.y - at.y), 0, 1e-12);
    const curves = outlineCurves(outline);
    for (let i = 0; i < 72; i++) {
      const angle = (i * Math.PI) / 36;
      for (const curve of curves) {
        for (const t of [0, 0.5, 1]) {
          const sampled = nearestOf(sweep, curve, { angle, t, clearance: 0 });
          near(sampled.crankAngle, angle, 1e-12);
          expect(distance(sampled.point.x, sampled.point.y)).toBeGreaterThanOrEqual(clearance - 1e-9);
        }
      }
    }
    // Nearer than a clearance is the same place or, where the rod keeps that clearance, none.
    for (const known of [sweep, { ...sweep, hollow: 0 as const }]) {
      near(nearerThan(known, clearance + 1 * mm)!.clearance, clearance, 1e-9);
      near(nearerThan(known, clearance + 1e-6)!.clearance, clearance, 1e-9);
      expect(nearerThan(known, clearance - 1e-8)).toBeUndefined();
      expect(nearerThan(known, clearance - 20 * mm)).toBeUndefined();
    }
    // A wall moved away by a distance is as much farther off.
    const away = (x: number, y: number) => distance(x, y) + 5 * mm;
    near(sweepOutline({ ...sweep, obstacle: [away] }).clearance, clearance + 5 * mm, 1e-9);
  },
);

property.prop([halves, cranks])(
  "there is no sweep without a rod, a mechanism or a thing to clear",
  (vertices, crank) => {
    const sweep = { crank, outline: buildOutline(vertices), obstacle: [() => 1] };
    refuses(() => requireSweep({ ...sweep, obstacle: [] }), "obstacle.length");
    refuses(() => requireSweep({ ...sweep, outline: { elements: [] } }), "outline.elements.length");
    refuses(() => requireSweep({ ...sweep, crank: { ...crank, rodLength: crank.throwRadius } }), "rodLength");
  },
);
