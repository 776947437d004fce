import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { between, deg, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { liftTableCurve } from "./liftTableCurve.ts";
import { standInLiftCurve } from "./standInLiftCurve.ts";
import { inletCurve, lobes, tableOf } from "./valves.test-support.ts";

const exact = { samples: tableOf(inletCurve, 2), curvatureWindow: 0 };

test("a table of the stand-in curve gives the stand-in curve back", () => {
  const curve = liftTableCurve(exact);
  for (let a = -720; a <= 720; a += 0.37) {
    const [found, asked] = [curve.at(a * deg), inletCurve.at(a * deg)];
    // At the seat the true curve has a bend the table cannot show.
    near(found.lift, asked.lift, 4e-6);
    if (Math.abs(((((a - 110) % 720) + 1080) % 720) - 360) < 135) {
      near(found.slope, asked.slope, 0.15 * mm);
      near(found.curvature, asked.curvature, 0.15 * mm);
    }
  }
});

test("an event alone, shut at both ends, is shut for the rest of the cycle", () => {
  const samples = tableOf(inletCurve, 2, -40).filter(({ angle }) => angle <= 260 * deg);
  const curve = liftTableCurve({ samples, curvatureWindow: 0 });
  for (const a of [261, 300, 500, 679, -42]) expect(curve.at(a * deg)).toMatchObject({ lift: 0, slope: 0 });
  nearly(curve.at(830 * deg).lift, 11 * mm, 1e-12);
});

test("rounding to 0.01 mm ruins second differences, a window of 15 degrees does not", () => {
  const samples = tableOf(inletCurve, 1).map(({ angle, lift }) => ({
    angle,
    lift: Math.round(lift / (0.01 * mm)) * 0.01 * mm,
  }));
  const worst = (curvatureWindow: number) => {
    const curve = liftTableCurve({ samples, curvatureWindow });
    const errors = Array.from({ length: 121 }, (_, i) => (50 + i) * deg).map((angle) =>
      Math.abs(curve.at(angle).curvature - inletCurve.at(angle).curvature),
    );
    return Math.max(...errors);
  };
  expect(worst(0)).toBeGreaterThan(20 * mm);
  expect(worst(15 * deg)).toBeLessThan(0.3 * mm);
});

test("a parabola comes back exactly, whatever its steps", () => {
  const angles = [-9, -8, -6, -5.5, -3, -1, 0, 2, 3, 3.5, 6, 8, 9];
  const parabola = (a: number) => 10 * mm - 5 * mm * a * a;
  const shut = [-20, -15, 15, 20].map((a) => ({ angle: a * deg, lift: 0 }));
  const samples = angles.map((a) => ({ angle: a * deg, lift: parabola(a * deg) }));
  const all = [...shut.slice(0, 2), ...samples, ...shut.slice(2)];
  for (const curvatureWindow of [0, 4 * deg]) {
    const curve = liftTableCurve({ samples: all, curvatureWindow });
    for (const a of [-5.2, -4, -2, 0, 1, 2.5, 4]) {
      near(curve.at(a * deg).lift, parabola(a * deg), 1e-15);
      near(curve.at(a * deg).slope, -10 * mm * a * deg, 1e-12);
      near(curve.at(a * deg).curvature, -10 * mm, 1e-10);
    }
  }
});

describe("properties", () => {
  const rough = fc.array(between(0, 0.012), { minLength: 37, maxLength: 37 }).map((lifts) =>
    // Steps of 20 degrees less a little, the first and the last shut.
    lifts.map((lift, i) => ({ angle: (i * 19.4 - 50) * deg, lift: i === 0 || i === 36 ? 0 : lift })),
  );

  property.prop([rough, between(0, 0.999), fc.integer({ min: 0, max: 35 })])(
    "between two samples the lift stays between theirs and runs one way",
    (samples, share, i) => {
      const curve = liftTableCurve({ samples, curvatureWindow: 0 });
      const [from, to] = [samples[i]!, samples[i + 1]!];
      const at = curve.at(from.angle + share * (to.angle - from.angle));
      expect(at.lift).toBeGreaterThanOrEqual(Math.min(from.lift, to.lift) - 1e-15);
      expect(at.lift).toBeLessThanOrEqual(Math.max(from.lift, to.lift) + 1e-15);
      expect(at.slope * Math.sign(to.lift - from.lift)).toBeGreaterThanOrEqual(-1e-12);
    },
  );

  property.prop([rough, between(-12, 12)])(
    "the slope is the derivative, and the cycle repeats",
    (samples, angle) => {
      const curve = liftTableCurve({ samples, curvatureWindow: 0.2 });
      const h = 1e-6;
      const difference = (curve.at(angle + h).lift - curve.at(angle - h).lift) / (2 * h);
      near(curve.at(angle).slope, difference, 1e-5);
      near(curve.at(angle + 4 * Math.PI).lift, curve.at(angle).lift, 1e-12);
      near(curve.at(angle + 4 * Math.PI).curvature, curve.at(angle).curvature, 1e-9);
    },
  );

  property.prop([lobes, between(0, 1)])("passes through its samples", (lobe, from) => {
    const samples = tableOf(standInLiftCurve(lobe), 5, from);
    const curve = liftTableCurve({ samples, curvatureWindow: 0 });
    for (const { angle, lift } of samples) near(curve.at(angle).lift, lift, 1e-15);
  });
});

test("boundary", () => {
  const with_ = (samples: typeof exact.samples) => () => liftTableCurve({ samples, curvatureWindow: 0 });
  const four = [0, 10, 20, 30].map((a) => ({ angle: a * deg, lift: a === 10 || a === 20 ? 1 * mm : 0 }));
  expect(with_(four)).not.toThrow();
  refuses(with_(four.slice(0, 3)), "samples");
  refuses(with_([four[0]!, four[2]!, four[1]!, four[3]!]), "samples[1].angle");
  refuses(with_([...four.slice(0, 3), { angle: 4 * Math.PI, lift: 0 }]), "samples[2].angle");
  refuses(with_([...four, { angle: 4 * Math.PI, lift: 0 }]), "samples[4].angle");
  refuses(with_([...four.slice(0, 3), { angle: 41 * deg, lift: 0 }]), "samples[2].angle");
  // Open at the end of the table: what lies beyond is not known.
  refuses(with_(four.map((s, i) => (i === 3 ? { ...s, lift: 0.1 * mm } : s))), "samples[3].angle");
  refuses(with_(four.map((s, i) => (i === 1 ? { ...s, lift: -1e-9 } : s))), "samples[1].lift");
  refuses(() => liftTableCurve({ samples: four, curvatureWindow: 31 * deg }), "curvatureWindow");
  expect(() => liftTableCurve(exact).at(Number.NaN)).toThrow("angle: found NaN");
  refusesNonFinite(liftTableCurve, { samples: four, curvatureWindow: 0.1 });
});
