import { expect, test } from "vitest";
import { deg, kN, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { capClampRatio, capSlipRatio } from "./mainCap.ts";

const inline = { bolts: 2, preload: 66 * kN, firingLoad: 34.57 * kN, firingLineAngle: 0 };
const vee = { bolts: 4, preload: 62 * kN, firingLoad: 16.14 * Math.SQRT2 * kN, firingLineAngle: 45 * deg };

test("examples", () => {
  near(capClampRatio(inline), 3.818, 1e-3);
  near(capSlipRatio({ ...vee, friction: 0.15 }), 2.155, 5e-4);
  nearly(capClampRatio(vee), 248 / 16.14);
});

test("nothing pushes the cap of an in-line engine sideways", () => {
  expect(capSlipRatio({ ...inline, friction: 0.15 })).toBe(Number.POSITIVE_INFINITY);
});

test("opposed cylinders push a cap along its joint: all of the clamp's friction against all of the load", () => {
  const flat = { ...inline, firingLineAngle: 90 * deg, friction: 0.15 };
  nearly(capSlipRatio(flat), (0.15 * 2 * 66) / 34.57);
  refuses(() => capSlipRatio({ ...flat, firingLineAngle: 91 * deg }), "firingLineAngle");
});

test("boundary", () => {
  refuses(() => capClampRatio({ ...vee, firingLineAngle: 90 * deg }), "firingLineAngle");
  refuses(() => capSlipRatio({ ...vee, friction: -0.1 }), "friction");
  refusesNonFinite(capClampRatio, vee);
  refusesNonFinite(capSlipRatio, { ...vee, friction: 0.15 });
});
