import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, mm, near, refusesNonFinite } from "../check/support.test-support.ts";
import { deckClearance } from "./deckClearance.ts";
import { stackGrowth } from "./stackGrowth.ts";

const steel = 12e-6;
const parts = {
  block: { size: 234 * mm, expansion: 21.5e-6, temperatureRise: 80 },
  crankThrow: { size: 46 * mm, expansion: steel, temperatureRise: 90 },
  rod: { size: 155 * mm, expansion: steel, temperatureRise: 100 },
  piston: { size: 33 * mm, expansion: 22.3e-6, temperatureRise: 122 },
};

test("an aluminium block outgrows a steel crank and rod", () => {
  // By hand: 0.40248 - (0.04968 + 0.186 + 0.08978) mm.
  near(stackGrowth(parts) / mm, 0.07702, 5e-6);
  refusesNonFinite(stackGrowth, parts);
});

property.prop([between(0, 25e-6), between(0, 25e-6), between(-30, 200), between(-30, 200), between(-2, 2)])(
  "is the deck clearance of the hot parts less that of the cold ones: positive opens the gap",
  (expansion, other, rise, otherRise, offset) => {
    const heat = { expansion, temperatureRise: rise };
    const otherHeat = { expansion: other, temperatureRise: otherRise };
    const sizes = {
      deckHeight: 234 * mm,
      throwRadius: 46 * mm,
      rodLength: 155 * mm,
      compressionHeight: 33 * mm,
    };
    const at = (block: number, inside: number) =>
      deckClearance({
        crank: {
          throwRadius: sizes.throwRadius * inside,
          rodLength: sizes.rodLength * inside,
          pinLineOffset: offset * mm,
        },
        deckHeight: sizes.deckHeight * block,
        compressionHeight: sizes.compressionHeight * inside,
      });
    const found = stackGrowth({
      block: { size: sizes.deckHeight, ...heat },
      crankThrow: { size: sizes.throwRadius, ...otherHeat },
      rod: { size: sizes.rodLength, ...otherHeat },
      piston: { size: sizes.compressionHeight, ...otherHeat },
    });
    // The offset moves top dead centre by e^2 / (2 (l + r)), a hundredth of a millimetre that hardly grows.
    near(found, at(1 + expansion * rise, 1 + other * otherRise) - at(1, 1), 1e-7);
  },
);
