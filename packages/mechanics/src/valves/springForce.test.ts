import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { requireValveSpring, springForce } from "./springForce.ts";

const spring = { seatForce: 900, springRate: 82 / mm, lift: 16.19 * mm };

test("example", () => {
  near(springForce(spring), 2228, 0.5);
});

property.prop([between(0, 1e3), between(0, 1e3), between(0, 0.02)])(
  "nested springs add",
  (inner, outer, lift) => {
    expect(() => requireValveSpring({ seatForce: inner, springRate: 70e3 })).not.toThrow();
    const both = springForce({ seatForce: inner + outer, springRate: 70e3, lift });
    const apart =
      springForce({ seatForce: inner, springRate: 20e3, lift }) +
      springForce({ seatForce: outer, springRate: 50e3, lift });
    nearly(both, apart, 1e-12);
  },
);

test("boundary", () => {
  refuses(() => springForce({ ...spring, springRate: 0 }), "springRate");
  refuses(() => springForce({ ...spring, seatForce: -1 }), "seatForce");
  refuses(() => springForce({ ...spring, lift: -1 }), "lift");
  refusesNonFinite(springForce, spring);
});
