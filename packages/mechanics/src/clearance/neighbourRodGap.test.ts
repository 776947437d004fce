import { fc, test } from "@fast-check/vitest";
import { between, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { neighbourRodGap, type RodsAlong } from "./neighbourRodGap.ts";

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

test("boundary", () => {
  refuses(() => neighbourRodGap({ ...four, positions: [0, 24 * mm], rodsPerPin: 2 }), "positions");
  refuses(() => neighbourRodGap({ ...four, positions: [0, 1, 2], rodsPerPin: 2 }), "positions");
  refuses(() => neighbourRodGap({ ...four, planeOffset: -1 }), "planeOffset");
  refusesNonFinite(neighbourRodGap, four);
});
