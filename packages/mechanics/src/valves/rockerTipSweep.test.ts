import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { notSolved, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { between, deg, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { rockerTipSweep } from "./rockerTipSweep.ts";

const arm = { armLength: 40 * mm, lift: 12 * mm, midLiftAngle: 0 };

test("by hand: a level arm of 40 mm over 12 mm of lift is 40 less sqrt(40^2 - 6^2)", () => {
  near(rockerTipSweep(arm) / mm, 40 - Math.sqrt(40 ** 2 - 6 ** 2), 1e-9);
  // 30 degrees up: from 14 to 26 mm above the pivot, so never level.
  const steep = Math.sqrt(40 ** 2 - 14 ** 2) - Math.sqrt(40 ** 2 - 26 ** 2);
  near(rockerTipSweep({ ...arm, midLiftAngle: 30 * deg }) / mm, steep, 1e-9);
});

const drawn = [between(20 * mm, 60 * mm), between(0, 16 * mm), between(-25 * deg, 25 * deg)] as const;
property.prop([...drawn])(
  "the spread of the contact over the lift, taken in small steps",
  (armLength, lift, midLiftAngle) => {
    const steps = 400;
    const places = Array.from({ length: steps + 1 }, (_, i) => {
      const height = armLength * Math.sin(midLiftAngle) + (i / steps - 0.5) * lift;
      return Math.sqrt(armLength ** 2 - height ** 2);
    });
    const spread = Math.max(...places) - Math.min(...places);
    const found = rockerTipSweep({ armLength, lift, midLiftAngle });
    expect(found).toBeGreaterThanOrEqual(spread - 1e-12);
    // Nearest to level a step of 0.04 mm is missed: 0.02^2 / (2 * 20) mm.
    expect(found).toBeLessThanOrEqual(spread + 2e-5 * mm);
  },
);

property.prop([...drawn, between(0.5, 2)])(
  "as wide up as down, least when level at half lift, of any scale",
  (armLength, lift, midLiftAngle, scale) => {
    const one = { armLength, lift, midLiftAngle };
    const sweep = rockerTipSweep(one);
    near(rockerTipSweep({ ...one, midLiftAngle: -midLiftAngle }), sweep, 1e-12);
    expect(sweep).toBeGreaterThanOrEqual(rockerTipSweep({ ...one, midLiftAngle: 0 }) - 1e-12);
    near(
      rockerTipSweep({ armLength: scale * armLength, lift: scale * lift, midLiftAngle }),
      scale * sweep,
      1e-12,
    );
  },
);

solvesBack(rockerTipSweep, {
  armLength: notSolved(38 * mm, 45 * mm, "a longer arm starts higher and swings less at once"),
  lift: rises(8 * mm, 12 * mm),
  midLiftAngle: rises(1 * deg, 20 * deg),
});

test("boundary", () => {
  nearly(rockerTipSweep({ ...arm, lift: 0 }), 0);
  refuses(() => rockerTipSweep({ ...arm, armLength: 6 * mm }), "armLength");
  refuses(() => rockerTipSweep({ ...arm, lift: -1e-9 }), "lift");
  refusesNonFinite(rockerTipSweep, arm);
});
