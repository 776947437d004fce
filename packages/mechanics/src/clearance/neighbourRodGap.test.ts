import { fc, test } from "@fast-check/vitest";
import { between, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { neighbourRodGap, type RodsAlong, rodOffsetByStagger } from "./neighbourRodGap.ts";

const four: RodsAlong = {
  positions: [0, 95 * mm, 190 * mm, 285 * mm],
  rodsPerPin: 1,
  rodWidth: 21.8 * mm,
  planeOffset: 0.3 * mm,
};

test("examples: a row of four, and a V whose rods share pins", () => {
  near(neighbourRodGap(four), 72.6 * mm, 1e-12);
  const eight = [0, 24, 112, 136, 224, 248, 336, 360].map((place) => place * mm);
  near(neighbourRodGap({ ...four, positions: eight, rodsPerPin: 2 }), (88 - 22.4) * mm, 1e-12);
});

test.prop([fc.array(between(-1, 1), { minLength: 2, maxLength: 8 })])(
  "one rod on a pin: the nearest two of all pairs",
  (positions) => {
    const pairs = positions.flatMap((one, i) => positions.slice(i + 1).map((other) => Math.abs(one - other)));
    near(neighbourRodGap({ ...four, positions }), Math.min(...pairs) - 22.4 * mm, 1e-12);
  },
);

const pair = { bankStagger: 24 * mm, crankpinLength: 48.1 * mm, rodWidth: 23.85 * mm };

test("example: offset by stagger", () => near(rodOffsetByStagger(pair), 0.125 * mm, 1e-12));

test.prop([between(0, 100), between(0, 2), between(8, 60)])(
  "rods without play on cylinders as far apart as they are wide stand on the axes",
  (stagger, play, width) => {
    const rod = { rodWidth: width * mm, crankpinLength: (2 * width + play) * mm };
    // Rods run from side to side by half of the play about cylinders that are staggered by half of the pin.
    nearly(rodOffsetByStagger({ ...rod, bankStagger: rod.crankpinLength / 2 }) + 1, (play * mm) / 4 + 1);
    const off = rodOffsetByStagger({ ...rod, bankStagger: stagger * mm });
    near(off, Math.abs(stagger * mm - rod.crankpinLength / 2) / 2 + (play * mm) / 4, 1e-12);
  },
);

test("boundary", () => {
  refuses(() => neighbourRodGap({ ...four, positions: [0, 24 * mm], rodsPerPin: 2 }), "positions");
  refuses(() => neighbourRodGap({ ...four, positions: [0, 1, 2], rodsPerPin: 2 }), "positions");
  refuses(() => neighbourRodGap({ ...four, planeOffset: -1 }), "planeOffset");
  refuses(() => rodOffsetByStagger({ ...pair, crankpinLength: 40 * mm }), "crankpinLength");
  refusesNonFinite(neighbourRodGap, four);
  refusesNonFinite(rodOffsetByStagger, pair);
});
