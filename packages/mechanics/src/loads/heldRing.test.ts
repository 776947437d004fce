import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import {
  between,
  deg,
  kN,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { type HeldRing, heldRing } from "./heldRing.ts";

const ring: HeldRing = { force: 36.7 * kN, radius: 29.5 * mm, pressure: "cosine", heldAngle: 130 * deg };
const pressures = fc.constantFrom("even" as const, "cosine" as const);
const held = between(90 * deg, 180 * deg);

// Kolchin & Demidov, Design of Automotive Engines, from memory: big-end cap 0.4 F and 0.023 F c held at 130 degrees;
// small end under an even pull, N = F (0.572 - 0.0008 phi), M = F r (0.00033 phi - 0.0297), phi in degrees.
describe("published coefficients", () => {
  test("cap of a big end", () => {
    const { tension, moment } = heldRing(ring)(0);
    near(tension / ring.force, 0.4, 0.005);
    near(-moment / (ring.force * 2 * ring.radius), 0.023, 0.0025);
  });
  test.each([90, 100, 110, 120, 130])("small end held at %i degrees", (at) => {
    const { tension, moment } = heldRing({ ...ring, pressure: "even", heldAngle: at * deg })(0);
    near(tension / ring.force, 0.572 - 0.0008 * at, 0.009);
    near(-moment / (ring.force * ring.radius), 0.00033 * at - 0.0297, 0.005);
  });
});

test("an even pull on a half ring held at its ends is that of a vessel: F / 2 everywhere, no bending", () => {
  const load = heldRing({ ...ring, pressure: "even", heldAngle: Math.PI / 2 });
  for (const angle of [0, 0.4, 0.9, Math.PI / 2]) {
    nearly(load(angle).tension, ring.force / 2);
    near(load(angle).moment / (ring.force * ring.radius), 0, 1e-12);
  }
});

test.prop([pressures, held])("at the joint each side carries half of the pull", (pressure, heldAngle) =>
  nearly(heldRing({ ...ring, pressure, heldAngle })(Math.PI / 2).tension, ring.force / 2),
);

test.prop([pressures, held])("the held ends neither turn nor move sideways", (pressure, heldAngle) => {
  const load = heldRing({ ...ring, pressure, heldAngle });
  const cells = 2000;
  let [turn, aside, size] = [0, 0, 0];
  // Simpson's rule on each side of the end of the loaded half.
  for (const [from, to] of [
    [0, Math.PI / 2],
    [Math.PI / 2, heldAngle],
  ] as const) {
    const step = (to - from) / cells;
    for (let i = 0; i <= cells; i++) {
      const angle = Math.min(from + i * step, heldAngle);
      const weight = ((i === 0 || i === cells ? 1 : i % 2 === 1 ? 4 : 2) * step) / 3;
      const { moment } = load(angle);
      turn += weight * moment;
      aside += weight * moment * Math.cos(angle);
      size += weight * ring.force * ring.radius;
    }
  }
  near(turn / size, 0, 1e-9);
  near(aside / size, 0, 1e-9);
});

test.prop([pressures, held, between(0, 1), between(0, 1)])(
  "every piece of the ring is in balance about its centre",
  (pressure, heldAngle, one, other) => {
    // The pin's pressure and the shear point at the centre: only tension and moment turn a piece about it.
    const load = heldRing({ ...ring, pressure, heldAngle });
    const about = (share: number) => {
      const { tension, moment } = load(share * heldAngle);
      return moment - ring.radius * tension;
    };
    near(about(one), about(other), 1e-9 * ring.force * ring.radius);
  },
);

test.prop([pressures, held, between(0.1, 5)])("scales with pull and radius", (pressure, heldAngle, times) => {
  const at = (more: Partial<HeldRing>) => heldRing({ ...ring, pressure, heldAngle, ...more })(0.7);
  const { tension, moment } = at({ force: times * ring.force, radius: 2 * ring.radius });
  nearly(tension, times * at({}).tension);
  nearly(moment, 2 * times * at({}).moment);
});

test("boundary", () => {
  refuses(() => heldRing({ ...ring, heldAngle: 89 * deg }), "heldAngle");
  refuses(() => heldRing({ ...ring, heldAngle: 181 * deg }), "heldAngle");
  refuses(() => heldRing(ring)(131 * deg), "angle");
  refusesNonFinite((one: HeldRing, angle: number) => heldRing(one)(angle), ring, 0.5);
  expect(heldRing(ring)(0).moment).toBeLessThan(0);
});
