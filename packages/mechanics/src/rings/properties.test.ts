import { fc, test as property } from "@fast-check/vitest";
import { falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { between, mm, near, nearly } from "../check/support.test-support.ts";
import { hotRingGap, ringGapClosing, ringGapForFactor } from "./ringGap.ts";
import { landRatio, ringBackClearance, ringSideClearance } from "./ringGroove.ts";
import { ringLiftPressure, ringMeanPressure } from "./ringMeanPressure.ts";
import { leastCompressionHeight, pinBoreToOilGroove, ringPackDepth } from "./ringPackDepth.ts";

const bore = [70 * mm, 110 * mm] as const;
// Rings that warm up more than their cylinder, as they do.
solvesBack(ringGapClosing, {
  bore: goesAs(1, ...bore),
  ringExpansion: rises(10e-6, 14e-6),
  ringTemperatureRise: rises(150, 250),
  boreExpansion: falls(10e-6, 12e-6),
  boreTemperatureRise: falls(60, 100),
});
solvesBack(hotRingGap, {
  coldGap: rises(0.2 * mm, 0.8 * mm),
  bore: falls(...bore),
  ringExpansion: falls(10e-6, 14e-6),
  ringTemperatureRise: falls(150, 250),
  boreExpansion: rises(10e-6, 12e-6),
  boreTemperatureRise: rises(60, 100),
});
solvesBack(ringGapForFactor, { bore: goesAs(1, ...bore), factor: goesAs(1, 0.003, 0.008) });
solvesBack(ringSideClearance, {
  grooveHeight: rises(1.02 * mm, 2.1 * mm),
  ringHeight: falls(0.8 * mm, 2 * mm),
});
solvesBack(ringBackClearance, {
  bore: rises(86 * mm, 90 * mm),
  grooveRootDiameter: falls(76 * mm, 79 * mm),
  ringRadialWall: falls(2.8 * mm, 3.8 * mm),
  pistonShift: falls(0, 0.06 * mm),
});
solvesBack(landRatio, { landHeight: goesAs(1, 3 * mm, 9 * mm), bore: goesAs(-1, ...bore) });
solvesBack(ringMeanPressure, {
  tangentialForce: goesAs(1, 4, 40),
  bore: goesAs(-1, ...bore),
  ringHeight: goesAs(-1, 0.8 * mm, 3 * mm),
});
solvesBack(ringLiftPressure, {
  ringHeight: goesAs(1, 0.8 * mm, 2 * mm),
  ringDensity: goesAs(1, 7100, 7900),
  acceleration: goesAs(1, 5e3, 6e4),
});
solvesBack(
  ringPackDepth,
  { land: rises(4 * mm, 9 * mm), groove: rises(1 * mm, 2 * mm), second: rises(2 * mm, 5 * mm) },
  ({ land, groove, second }) => ringPackDepth([land, groove, second]),
);
solvesBack(pinBoreToOilGroove, {
  compressionHeight: rises(26 * mm, 36 * mm),
  ringPackDepth: falls(12 * mm, 18 * mm),
  pinDiameter: falls(18 * mm, 24 * mm),
});
solvesBack(leastCompressionHeight, {
  ringPackDepth: rises(12 * mm, 18 * mm),
  pinDiameter: rises(18 * mm, 24 * mm),
  leastWall: rises(0, 3 * mm),
});

property.prop([fc.array(between(0.5 * mm, 9 * mm), { minLength: 1, maxLength: 7 })])(
  "the depth of a pack does not depend on the order",
  (heights) => nearly(ringPackDepth([...heights].reverse()), ringPackDepth(heights), 1e-12),
);

property.prop([between(...bore), between(10e-6, 20e-6), between(0, 300)])(
  "a ring that grows with its cylinder keeps its gap",
  (size, expansion, rise) => {
    const warming = { bore: size, ringExpansion: expansion, boreExpansion: expansion };
    const even = { ...warming, ringTemperatureRise: rise, boreTemperatureRise: rise };
    near(ringGapClosing(even), 0, 1e-15);
    nearly(hotRingGap({ ...even, coldGap: 0.4 * mm }), 0.4 * mm, 1e-12);
  },
);

property.prop([between(4, 40), between(...bore), between(0.8 * mm, 3 * mm)])(
  "the bore's pressure on half the ring is held by the tension of its two ends",
  (tangentialForce, size, ringHeight) => {
    const pressure = ringMeanPressure({ tangentialForce, bore: size, ringHeight });
    nearly(pressure * size * ringHeight, 2 * tangentialForce, 1e-12);
  },
);
