import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, deg, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { shiftLiftCurve } from "./shiftLiftCurve.ts";
import { constantCurve, exhaustCurve, inletCurve } from "./valves.test-support.ts";
import { valveToValve } from "./valveToValve.ts";

const inlet = {
  across: 19 * mm,
  along: 0,
  height: 8 * mm,
  tilt: 12 * deg,
  radius: 17.5 * mm,
  curve: inletCurve,
};
const exhaust = {
  across: -17 * mm,
  along: 0,
  height: 8 * mm,
  tilt: 13 * deg,
  radius: 15 * mm,
  curve: exhaustCurve,
};
const shut = constantCurve(0);

test("upright valves keep the distance of their edges", () => {
  const upright = (head: typeof inlet) => ({ ...head, tilt: 0, curve: shut });
  const found = valveToValve({ inlet: upright(inlet), exhaust: upright(exhaust) });
  near(found.clearance / mm, 36 - 32.5, 1e-9);
});

test("leaning valves come together as they open, nearest in the overlap", () => {
  const resting = valveToValve({ inlet: { ...inlet, curve: shut }, exhaust: { ...exhaust, curve: shut } });
  const edges = Math.hypot(
    36 - 17.5 * Math.cos(12 * deg) - 15 * Math.cos(13 * deg),
    17.5 * Math.sin(12 * deg) - 15 * Math.sin(13 * deg),
  );
  near(resting.clearance / mm, edges, 1e-9);
  const found = valveToValve({ inlet, exhaust });
  expect(found.clearance).toBeLessThan(resting.clearance);
  expect(Math.abs(found.angle)).toBeLessThan(37 * deg);
});

test("held open by hand at one angle, against a hand construction", () => {
  // Both at 45 degrees, edges 10 mm from the centres: inlet's inner edge at its centre + 10 (-cos, sin).
  const steep = { along: 0, tilt: 45 * deg, radius: 10 * mm, height: 0 };
  const found = valveToValve({
    inlet: { ...steep, across: 20 * mm, curve: constantCurve(2 * Math.SQRT2 * mm) },
    exhaust: { ...steep, across: -20 * mm, curve: constantCurve(4 * Math.SQRT2 * mm) },
  });
  // Inlet centre (18, -2), exhaust centre (-16, -4); inner edges at 10 / sqrt 2 in and up.
  near(found.clearance / mm, Math.hypot(34 - 20 / Math.SQRT2, 2), 1e-9);
});

test("a clash is below zero", () => {
  const across = { ...inlet, across: 10 * mm };
  expect(valveToValve({ inlet: across, exhaust: { ...exhaust, across: -8 * mm } }).clearance).toBeLessThan(0);
});

property.prop([between(0, 8)])("more overlap never brings the valves farther apart", (closer) => {
  const wide = valveToValve({
    inlet: { ...inlet, curve: shiftLiftCurve(inletCurve, -closer * deg) },
    exhaust: { ...exhaust, curve: shiftLiftCurve(exhaustCurve, closer * deg) },
  });
  expect(wide.clearance).toBeLessThanOrEqual(valveToValve({ inlet, exhaust }).clearance + 1e-9);
});

property.prop([between(0.001, 0.01), between(-0.5, 0.5)], { numRuns: 30 })(
  "mirrored engines agree",
  (lift, tilt) => {
    const a = { ...inlet, tilt, curve: constantCurve(lift) };
    const b = { ...exhaust, curve: constantCurve(lift / 2) };
    const mirrored = valveToValve({
      inlet: { ...b, across: -b.across },
      exhaust: { ...a, across: -a.across },
    });
    near(mirrored.clearance, valveToValve({ inlet: a, exhaust: b }).clearance, 1e-12);
  },
);

test("upright valves set apart along the crankshaft, by hand", () => {
  const upright = (head: typeof inlet, along: number) => ({ ...head, along, tilt: 0, curve: shut });
  const found = valveToValve({ inlet: upright(inlet, 18 * mm), exhaust: upright(exhaust, -9 * mm) });
  near(found.clearance / mm, Math.hypot(36, 27) - 32.5, 1e-6);
});

property.prop([between(0.01, 20)], { numRuns: 6 })(
  "the least over the cycle of valves set apart, against every half degree; farther apart is never nearer",
  (along) => {
    const heads = { inlet: { ...inlet, along: along * mm }, exhaust };
    const found = valveToValve(heads);
    const at = (angle: number) =>
      valveToValve({
        inlet: { ...heads.inlet, curve: constantCurve(inletCurve.at(angle).lift) },
        exhaust: { ...exhaust, curve: constantCurve(exhaustCurve.at(angle).lift) },
      }).clearance;
    for (let step = -36; step <= 36; step++)
      expect(at(step * 10 * deg)).toBeGreaterThanOrEqual(found.clearance - 1e-9);
    near(at(found.angle), found.clearance, 1e-9);
    expect(found.clearance).toBeGreaterThanOrEqual(valveToValve({ inlet, exhaust }).clearance - 1e-9);
  },
);

test("boundary", () => {
  refuses(() => valveToValve({ inlet: { ...inlet, radius: 0 }, exhaust }), "radius");
  refuses(() => valveToValve({ inlet, exhaust: { ...exhaust, tilt: 90 * deg } }), "tilt");
  refusesNonFinite(valveToValve, { inlet: { ...inlet, curve: shut }, exhaust: { ...exhaust, curve: shut } });
});
