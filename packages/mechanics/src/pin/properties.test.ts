import { test as property } from "@fast-check/vitest";
import { falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { between, GPa, kN, MPa, mm, near, nearly, um } from "../check/support.test-support.ts";
import { bearingPressure } from "./bearingPressure.ts";
import { crownStress } from "./crownStress.ts";
import { hotClearance, hotClearanceFromCold } from "./hotClearance.ts";
import { pinEndFloat } from "./pinEndFloat.ts";
import { pinBendingStress, pinOvalisation, pinShearStress } from "./pinStress.ts";
import { pinWallRatio } from "./pinWallRatio.ts";

solvesBack(bearingPressure, {
  force: goesAs(1, 5 * kN, 90 * kN),
  diameter: goesAs(-1, 18 * mm, 60 * mm),
  length: goesAs(-1, 15 * mm, 40 * mm),
});
solvesBack(pinEndFloat, {
  retainerSpan: rises(60 * mm, 75 * mm),
  retainerThickness: falls(1 * mm, 2 * mm),
  pinLength: falls(50 * mm, 62 * mm),
});
solvesBack(pinWallRatio, {
  pinDiameter: goesAs(-1, 18 * mm, 26 * mm),
  pinBore: goesAs(1, 8 * mm, 16 * mm),
});
solvesBack(crownStress, {
  pressure: goesAs(1, 4 * MPa, 18 * MPa),
  innerRadius: goesAs(2, 25 * mm, 45 * mm),
  thickness: goesAs(-2, 4 * mm, 12 * mm),
});
const pin = { force: goesAs(1, 5 * kN, 90 * kN), pinDiameter: falls(20 * mm, 24 * mm) };
solvesBack(pinBendingStress, {
  ...pin,
  pinBore: rises(8 * mm, 16 * mm),
  pinLength: rises(52 * mm, 75 * mm),
  bossDistance: rises(20 * mm, 30 * mm),
  smallEndWidth: falls(15 * mm, 25 * mm),
});
solvesBack(pinShearStress, { ...pin, pinBore: rises(8 * mm, 16 * mm) });
solvesBack(pinOvalisation, {
  ...pin,
  pinBore: rises(10 * mm, 15.5 * mm),
  pinLength: goesAs(-1, 52 * mm, 75 * mm),
  elasticModulus: goesAs(-1, 180 * GPa, 215 * GPa),
});
solvesBack(
  hotClearance,
  {
    bore: rises(80.05 * mm, 80.15 * mm),
    boreExpansion: rises(10e-6, 23e-6),
    boreRise: rises(60, 120),
    shaft: falls(79.9 * mm, 80 * mm),
    shaftExpansion: falls(18e-6, 23e-6),
    shaftRise: falls(120, 200),
  },
  ({ bore, boreExpansion, boreRise, shaft, shaftExpansion, shaftRise }) =>
    hotClearance({
      bore: { size: bore, expansion: boreExpansion, temperatureRise: boreRise },
      shaft: { size: shaft, expansion: shaftExpansion, temperatureRise: shaftRise },
    }),
);
solvesBack(hotClearanceFromCold, {
  coldClearance: rises(0, 30 * um),
  diameter: rises(18 * mm, 26 * mm),
  outerExpansion: rises(19e-6, 24e-6),
  innerExpansion: falls(10e-6, 13e-6),
  temperatureRise: rises(60, 180),
});

property.prop([between(18 * mm, 30 * mm), between(0, 0.9), between(kN, 90 * kN)])(
  "the shear of half the load balances: never below its mean over the section, and 4/3 of it when solid",
  (pinDiameter, ratio, force) => {
    const at = (pinBore: number) => pinShearStress({ force, pinDiameter, pinBore });
    const mean = (pinBore: number) => force / 2 / ((Math.PI / 4) * (pinDiameter ** 2 - pinBore ** 2));
    // 0.85 stands for 8 / (3 pi) = 0.8488, to two digits.
    nearly(at(0), (4 / 3) * mean(0), 2e-3);
    const share = at(ratio * pinDiameter) / mean(ratio * pinDiameter);
    nearly(share, (4 / 3) * ((1 + ratio + ratio ** 2) / (1 + ratio ** 2)), 2e-3);
  },
);

property.prop([between(10 * mm, 100 * mm), between(0, 40 * um), between(-20, 150)])(
  "sizes and their difference give one clearance hot, to the growth of the clearance itself",
  (size, coldClearance, temperatureRise) => {
    const bore = { size: size + coldClearance, expansion: 22e-6, temperatureRise };
    const shaft = { size, expansion: 12e-6, temperatureRise };
    const found = hotClearance({ bore, shaft });
    const fromCold = hotClearanceFromCold({
      coldClearance,
      diameter: size,
      outerExpansion: 22e-6,
      innerExpansion: 12e-6,
      temperatureRise,
    });
    near(found - coldClearance * 22e-6 * temperatureRise, fromCold, 1e-15);
  },
);
