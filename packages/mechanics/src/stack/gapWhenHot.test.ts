import { fc, test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { falls, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { between, mm, near, refuses, refusesNonFinite, um } from "../check/support.test-support.ts";
import { hotClearance } from "../pin/hotClearance.ts";
import { gapWhenHot } from "./gapWhenHot.ts";
import { thermalGrowth } from "./ThermalPart.ts";

const part = (size: number, expansion: number, temperatureRise: number) => ({
  size,
  expansion,
  temperatureRise,
});
/** Two aluminium rods on a steel crankpin (invented). */
const pin = part(48.1 * mm, 12e-6, 90);
const rod = part(23.85 * mm, 23.3e-6, 100);
const rods = { gap: 0.4 * mm, around: [pin], within: [rod, rod] };

test("example: two aluminium rods close their side clearance by 0.059 mm", () => {
  near(gapWhenHot(rods) / mm, 0.4 + 0.051948 - 0.111141, 1e-9);
  refuses(() => gapWhenHot({ ...rods, around: [{ ...pin, size: 0 }] }), "size");
  refusesNonFinite(gapWhenHot, rods);
});

property.prop([between(20 * mm, 100 * mm), between(-0.2 * mm, 0.2 * mm), between(-60, 250)])(
  "a shaft in a bore is one of its cases, and one metal at one temperature scales with its size",
  (size, gap, temperatureRise) => {
    const bore = part(size + gap, 21e-6, temperatureRise);
    const shaft = part(size, 12e-6, temperatureRise);
    near(gapWhenHot({ gap, around: [bore], within: [shaft] }), hotClearance({ bore, shaft }), 1e-15);
    const one = { ...shaft, expansion: 21e-6 };
    near(gapWhenHot({ gap, around: [bore], within: [one] }), gap * (1 + 21e-6 * temperatureRise), 1e-15);
  },
);

property.prop([fc.array(between(1 * mm, 80 * mm), { maxLength: 5 }), between(-0.1 * mm, 1 * mm)])(
  "parts add up, and what stands on both sides takes nothing",
  (sizes, gap) => {
    const parts = sizes.map((size) => part(size, 12e-6, 80));
    near(gapWhenHot({ gap, around: parts, within: parts }), gap, 1e-15);
    const growth = parts.reduce((sum, one) => sum + thermalGrowth(one), 0);
    near(gapWhenHot({ gap, around: parts, within: [] }), gap + growth, 1e-15);
  },
);

solvesBack(
  gapWhenHot,
  {
    gap: rises(20 * um, 400 * um),
    span: rises(20 * mm, 60 * mm),
    filling: falls(15 * mm, 30 * mm),
    fillingExpansion: falls(9e-6, 24e-6),
    fillingRise: falls(20, 250),
  },
  ({ gap, span, filling, fillingExpansion, fillingRise }) =>
    gapWhenHot({
      gap,
      around: [part(span, 12e-6, 90)],
      within: [part(filling, fillingExpansion, fillingRise)],
    }),
);
