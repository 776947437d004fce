import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { between, deg, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { polynomialLiftCurve } from "./polynomialLiftCurve.ts";

const lobe = { greatestLift: 11 * mm, centre: 110 * deg, duration: { duration: 276 * deg, lift: 0.25 * mm } };

property.prop([between(6, 16), between(220, 300), between(0.01, 0.2), between(-1, 1)])(
  "the printed polynomial 64 u^3 - 192 u^4 + 192 u^5 - 64 u^6, and the duration it was given",
  (greatest, duration, share, x) => {
    const greatestLift = greatest * mm;
    const given = { duration: duration * deg, lift: share * greatestLift };
    const { at, seatDuration } = polynomialLiftCurve({ ...lobe, greatestLift, duration: given });
    for (const side of [-1, 1]) near(at(lobe.centre + (side * given.duration) / 2).lift, given.lift, 1e-12);
    const u = (1 + x) / 2;
    near(
      at(lobe.centre + (x * seatDuration) / 2).lift,
      greatestLift * (64 * u ** 3 - 192 * u ** 4 + 192 * u ** 5 - 64 * u ** 6),
      1e-12,
    );
  },
);

property.prop([between(-720, 720)])(
  "slope and curvature are its own derivatives; the same after a cycle, mirrored about its top",
  (degrees) => {
    const { at } = polynomialLiftCurve(lobe);
    const angle = degrees * deg;
    const step = 1e-4;
    near(at(angle).slope, (at(angle + step).lift - at(angle - step).lift) / (2 * step), 1e-8);
    near(at(angle).curvature, (at(angle + step).slope - at(angle - step).slope) / (2 * step), 1e-5);
    near(at(angle + 4 * Math.PI).lift, at(angle).lift, 1e-12);
    near(at(2 * lobe.centre - angle).lift, at(angle).lift, 1e-12);
    expect(at(angle).lift).toBeLessThanOrEqual(lobe.greatestLift);
  },
);

test("at its top and at the seat, by hand", () => {
  const { at, seatDuration } = polynomialLiftCurve(lobe);
  const half = seatDuration / 2;
  expect(at(lobe.centre)).toMatchObject({ lift: 11 * mm });
  nearly(at(lobe.centre).curvature, (-6 * 11 * mm) / half ** 2);
  near(at(lobe.centre + half - 1e-6).curvature, 0, 1e-6);
  // 276 degrees over sqrt(1 - cbrt(0.25/11)).
  near(seatDuration / deg, 276 / Math.sqrt(1 - Math.cbrt(0.25 / 11)), 1e-9);
});

solvesBack(
  polynomialLiftCurve,
  {
    greatestLift: goesAs(1, 8 * mm, 12 * mm),
    duration: rises(240 * deg, 290 * deg),
    share: rises(0.02, 0.15),
    centre: rises(100 * deg, 112 * deg),
  },
  ({ greatestLift, duration, share, centre }) =>
    polynomialLiftCurve({
      greatestLift,
      centre,
      duration: { duration, lift: share * greatestLift },
    }).at(170 * deg).lift,
);

test("boundary", () => {
  const at = (change: object) => () => polynomialLiftCurve({ ...lobe, ...change });
  refuses(at({ greatestLift: 0 }), "greatestLift");
  refuses(at({ duration: { duration: 276 * deg, lift: 11 * mm } }), "duration.lift");
  refuses(at({ duration: { duration: 0, lift: mm } }), "duration.duration");
  refuses(at({ duration: { duration: 700 * deg, lift: mm } }), "seatDuration");
  refuses(() => polynomialLiftCurve(lobe).at(Number.NaN), "angle");
  refusesNonFinite((one: typeof lobe) => polynomialLiftCurve(one), lobe);
});
