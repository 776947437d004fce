import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  angles,
  between,
  centredCrank,
  cranks,
  near,
  offsetCrank,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { pistonAcceleration } from "../kinematics/pistonAcceleration.ts";
import { accelerationHarmonics } from "./accelerationHarmonics.ts";

/**
 * The coefficients without an offset by another road: l sqrt(1 - (r/l)^2 sin^2) expanded by the binomial
 * theorem, the even powers of the sine as cosines of multiples, and two derivatives.
 */
function bySeries(ratio: number, order: number): number {
  if (order % 2 === 1) return order === 1 ? 1 : 0;
  const half = order / 2;
  let total = 0;
  let power = 1; // coefficient of x^n in sqrt(1 - x)
  let central = 1; // binomial(2n, n - half) / 4^n once n reaches half
  for (let n = 1; n <= 600; n++) {
    power *= (n - 1.5) / n;
    if (n === half) central = 4 ** -half;
    if (n > half) central *= (2 * n * (2 * n - 1)) / ((n - half) * (n + half)) / 4;
    if (n >= half) total += power * ratio ** (2 * n) * 2 * (-1) ** half * central;
  }
  return (order ** 2 * total) / ratio;
}

test("without an offset the orders follow the binomial expansion", () => {
  for (const ratio of [0.2, 0.3, 0.325, 0.45, 0.8]) {
    const crank = { throwRadius: 0.05, rodLength: 0.05 / ratio, pinLineOffset: 0 };
    const found = accelerationHarmonics({ crank, greatestOrder: 12 });
    expect(found.map((harmonic) => harmonic.order)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    for (const { order, cosine, sine } of found) {
      near(cosine, bySeries(ratio, order), 5e-14);
      near(sine, 0, 5e-14);
    }
  }
});

test("the first terms of the usual series", () => {
  const ratio = 0.1;
  const crank = { throwRadius: 0.01, rodLength: 0.1, pinLineOffset: 0 };
  const found = accelerationHarmonics({ crank, greatestOrder: 6 });
  near(found[1]!.cosine, ratio + ratio ** 3 / 4 + (15 * ratio ** 5) / 128, 1e-8);
  near(found[3]!.cosine, -(ratio ** 3 / 4 + (3 * ratio ** 5) / 16), 2e-8);
  near(found[5]!.cosine, (9 * ratio ** 5) / 128, 1e-8);
});

test("boundary", () => {
  refusesNonFinite(accelerationHarmonics, { crank: offsetCrank, greatestOrder: 3 });
  refuses(() => accelerationHarmonics({ crank: centredCrank, greatestOrder: 0 }), "greatestOrder");
  refuses(() => accelerationHarmonics({ crank: centredCrank, greatestOrder: 1.5 }), "greatestOrder");
  refuses(() => accelerationHarmonics({ crank: centredCrank, greatestOrder: 1001 }), "greatestOrder");
  const short = { throwRadius: 0.1, rodLength: 0.10005, pinLineOffset: 0 };
  expect(() => accelerationHarmonics({ crank: short, greatestOrder: 2 })).toThrow(RangeError);
  expect(() => accelerationHarmonics({ crank: short, greatestOrder: 2 })).toThrow("rodLength");
});

property.prop([cranks, angles])(
  "the orders add up to the exact acceleration, with and without offset",
  (crank, angle) => {
    const sum = accelerationHarmonics({ crank, greatestOrder: 60 }).reduce(
      (total, { order, cosine, sine }) =>
        total + cosine * Math.cos(order * angle) + sine * Math.sin(order * angle),
      0,
    );
    near(sum, -pistonAcceleration(crank, angle, 1) / crank.throwRadius, 1e-11);
  },
);

property.prop([between(1.01, 1.5)])(
  "a very short rod: asking for more orders does not move the low ones",
  (reach) => {
    const crank = { throwRadius: 0.1, rodLength: 0.1 * reach, pinLineOffset: 0 };
    const few = accelerationHarmonics({ crank, greatestOrder: 4 });
    const many = accelerationHarmonics({ crank, greatestOrder: 300 });
    few.forEach(({ cosine, sine }, i) => {
      near(cosine, many[i]!.cosine, 1e-11);
      near(sine, many[i]!.sine, 1e-11);
    });
  },
);

property.prop([cranks])("an offset to the other side turns the sign of the sines only", (crank) => {
  // Seen in a mirror the crank turns backwards, which leaves cos(k theta) and changes sin(k theta).
  const mirrored = { ...crank, pinLineOffset: -crank.pinLineOffset };
  const found = accelerationHarmonics({ crank, greatestOrder: 8 });
  accelerationHarmonics({ crank: mirrored, greatestOrder: 8 }).forEach(({ cosine, sine }, i) => {
    near(cosine, found[i]!.cosine, 1e-13);
    near(sine, -found[i]!.sine, 1e-13);
  });
});
