import { test } from "@fast-check/vitest";
import { between, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { rodOffsetByStagger } from "./rodOffsetByStagger.ts";

const pair = { bankStagger: 24 * mm, crankpinLength: 48.1 * mm, rodWidth: 23.85 * mm, beamOffset: 0 };

test("examples", () => {
  near(rodOffsetByStagger(pair), 0.125 * mm, 1e-12);
  // A narrow pin in a block with more stagger: rods whose small ends are set outwards by half of the difference.
  near(rodOffsetByStagger({ ...pair, bankStagger: 28 * mm, beamOffset: 2 * mm }), 0.125 * mm, 1e-12);
});

test.prop([between(0, 100), between(0, 2), between(8, 60), between(-5, 5)])(
  "is what is left of the stagger with the rods apart by half of the pin, and a quarter of their play",
  (stagger, play, width, offset) => {
    const crankpinLength = (2 * width + play) * mm;
    const off = rodOffsetByStagger({
      bankStagger: stagger * mm,
      crankpinLength,
      rodWidth: width * mm,
      beamOffset: offset * mm,
    });
    const middle = Math.abs((stagger * mm - crankpinLength / 2) / 2 - offset * mm);
    near(off, middle + (play * mm) / 4, 1e-12);
  },
);

test("boundary", () => {
  refuses(() => rodOffsetByStagger({ ...pair, crankpinLength: 40 * mm }), "crankpinLength");
  refuses(() => rodOffsetByStagger({ ...pair, bankStagger: -1 }), "bankStagger");
  refusesNonFinite(rodOffsetByStagger, pair);
});
