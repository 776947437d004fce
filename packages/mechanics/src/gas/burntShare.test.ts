import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, deg, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { type Burning, burntShare, usualBurning } from "./burntShare.ts";

const burning: Burning = { start: -16 * deg, duration: 58 * deg, ...usualBurning };

test("examples and boundary", () => {
  near(burntShare(burning, 13 * deg), 0.46474, 5e-6);
  expect(burntShare(burning, -16 * deg)).toBe(0);
  expect(burntShare(burning, -90 * deg)).toBe(0);
  near(burntShare(burning, 42 * deg), 1 - Math.exp(-5), 1e-12);
  expect(burntShare(burning, 120 * deg)).toBe(burntShare(burning, 42 * deg));
  refuses(() => burntShare({ ...burning, duration: 0 }, 0), "duration");
  refuses(() => burntShare({ ...burning, efficiencyFactor: 0 }, 0), "efficiencyFactor");
  refuses(() => burntShare({ ...burning, formFactor: -1 }, 0), "formFactor");
  refusesNonFinite((one: Burning, at: { angle: number }) => burntShare(one, at.angle), burning, {
    angle: 1,
  });
});

property.prop([between(-1, 1), between(-1, 1), between(-0.9, 6)])(
  "never falls with the crank angle",
  (one, other, formFactor) => {
    const shares = [one, other].sort((a, b) => a - b).map((at) => burntShare({ ...burning, formFactor }, at));
    expect(shares[1]!).toBeGreaterThanOrEqual(shares[0]!);
  },
);

property.prop([between(0.05, 0.95)])("the angle of a share is recovered", (share) => {
  const full = 1 - Math.exp(-burning.efficiencyFactor);
  const progress = (-Math.log(1 - share * full) / burning.efficiencyFactor) ** (1 / (burning.formFactor + 1));
  near(burntShare(burning, burning.start + progress * burning.duration), share * full, 1e-12);
});
