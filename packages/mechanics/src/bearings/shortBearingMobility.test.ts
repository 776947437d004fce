import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { shortBearingMobility } from "./shortBearingMobility.ts";

/** Mobility along the load with the journal on its line, from the short bearing's squeeze pressures. */
function squeezeMobility(along: number, lengthRatio: number): number {
  const steps = 20_000;
  let integral = 0;
  for (let i = 0; i < steps; i++) {
    const angle = -Math.PI / 2 + ((i + 0.5) * Math.PI) / steps;
    integral += (Math.cos(angle) ** 2 / (1 - along * Math.cos(angle)) ** 3) * (Math.PI / steps);
  }
  return 1 / (2 * lengthRatio ** 2 * integral);
}

test("examples: mobility along the load, curve and integral", () => {
  const lengthRatio = 20 / 48;
  const along = (at: number) => shortBearingMobility(at, 0, lengthRatio).along;
  near(along(0), 1.833465, 5e-7);
  near(squeezeMobility(0, lengthRatio), 1.833465, 5e-7);
  near(along(0.5), 0.3241139, 5e-8);
  near(squeezeMobility(0.5, lengthRatio), 0.3159374, 5e-7);
  near(along(0.8), 0.03279802, 5e-9);
  near(squeezeMobility(0.8, lengthRatio), 0.0313845, 5e-7);
});

property.prop([between(0, 0.8), between(0.1, 1)])("within 5 % of the squeeze integral", (at, lengthRatio) => {
  nearly(shortBearingMobility(at, 0, lengthRatio).along, squeezeMobility(at, lengthRatio), 0.05);
});

property.prop([between(-0.9, 0.9), between(-0.4, 0.4)])("a mirror about the load mirrors it", (at, off) => {
  const [one, other] = [shortBearingMobility(at, off, 0.4), shortBearingMobility(at, -off, 0.4)];
  expect(one.along).toBe(other.along);
  expect(one.across + other.across).toBe(0);
});

test("boundary", () => {
  refuses(() => shortBearingMobility(1, 0, 0.4), "along");
  refusesNonFinite(shortBearingMobility, 0.5, 0.1, 0.4);
});
