import { test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { between, GPa, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { clampedCompliance } from "./clampedCompliance.ts";
import { type PressureZone, pressureConeTangent, pressureZoneCompliance } from "./pressureZone.ts";

const zone: PressureZone = {
  headDiameter: 19 * mm,
  holeDiameter: 11.5 * mm,
  outerDiameter: 33 * mm,
  tangent: 0.48,
  into: "thread",
  layers: [
    { length: 130 * mm, elasticModulus: 73 * GPa },
    { length: 1 * mm, elasticModulus: 150 * GPa },
    { length: 19 * mm, elasticModulus: 110 * GPa },
  ],
};

/** Slice by slice, with the outline of the zone drawn anew: the independent route. */
function bySlices({ layers, into, ...one }: PressureZone, count = 20_000): number {
  const grip = layers.reduce((sum, { length }) => sum + length, 0);
  let sum = 0;
  let top = 0;
  for (const { length, elasticModulus } of layers) {
    const step = length / count;
    for (let i = 0; i < count; i++) {
      const depth = top + (i + 0.5) * step;
      const fromFace = into === "thread" ? depth : grip / 2 - Math.abs(depth - grip / 2);
      const width = Math.min(one.outerDiameter, one.headDiameter + 2 * one.tangent * fromFace);
      sum += step / (elasticModulus * (Math.PI / 4) * (width ** 2 - one.holeDiameter ** 2));
    }
    top += length;
  }
  return sum;
}

describe("compliance of the pressed zone", () => {
  property.prop([between(17, 60), between(0.2, 0.8), between(4, 200)])(
    "is the sum of its slices, cone and sleeve, one cone or two",
    (outer, tangent, length) => {
      for (const into of ["nut", "thread"] as const) {
        const one: PressureZone = {
          ...zone,
          into,
          tangent,
          outerDiameter: outer * mm,
          layers: [{ length: length * mm, elasticModulus: 73 * GPa }, ...zone.layers.slice(1)],
        };
        nearly(pressureZoneCompliance(one), bySlices(one), 1e-5);
      }
    },
  );

  property.prop([between(5, 300), between(5, 30)])(
    "with a head of 1.5 d, a hole of d and 30° it is the frusta of Shigley",
    (length, size) => {
      const diameter = size * mm;
      const layers = [{ length: length * mm, elasticModulus: 90 * GPa }];
      const tangent = Math.tan(Math.PI / 6);
      const found = pressureZoneCompliance({
        headDiameter: 1.5 * diameter,
        holeDiameter: diameter,
        outerDiameter: 1,
        tangent,
        into: "nut",
        layers,
      });
      nearly(found, clampedCompliance({ grip: length * mm, diameter, elasticModulus: 90 * GPa }), 1e-9);
    },
  );

  test("steel cover on an iron base: Shigley’s example 8-5 (sizes from memory, 17.4 Mlbf/in printed)", () => {
    const inch = 25.4 * mm;
    const million = 4.4482216152605e6 / inch;
    const psi = 4.4482216152605 / inch ** 2;
    const found = pressureZoneCompliance({
      headDiameter: 1.5 * 0.625 * inch,
      holeDiameter: 0.625 * inch,
      outerDiameter: 1,
      tangent: Math.tan(Math.PI / 6),
      into: "nut",
      layers: [
        { length: 0.6875 * inch, elasticModulus: 30e6 * psi },
        { length: 0.3125 * inch, elasticModulus: 16e6 * psi },
      ],
    });
    near(1 / found / million, 17.4, 0.05);
  });

  property.prop([between(1, 3)])("narrower metal gives more, stiffer metal less", (times) => {
    const wider = { ...zone, outerDiameter: times * zone.outerDiameter };
    expect(pressureZoneCompliance(wider)).toBeLessThanOrEqual(pressureZoneCompliance(zone));
    const stiffer = zone.layers.map((one) => ({ ...one, elasticModulus: times * one.elasticModulus }));
    nearly(pressureZoneCompliance({ ...zone, layers: stiffer }), pressureZoneCompliance(zone) / times);
  });

  test("metal no wider than the head is a sleeve", () => {
    const sleeve = { ...zone, outerDiameter: 18 * mm, layers: zone.layers.slice(0, 1) };
    const area = (Math.PI / 4) * ((18 * mm) ** 2 - (11.5 * mm) ** 2);
    nearly(pressureZoneCompliance(sleeve), (130 * mm) / (73 * GPa * area));
  });

  test("boundary", () => {
    refuses(() => pressureZoneCompliance({ ...zone, headDiameter: 11.5 * mm }), "headDiameter");
    refuses(() => pressureZoneCompliance({ ...zone, layers: [] }), "layers");
    refusesNonFinite(pressureZoneCompliance, zone);
  });
});

describe("tangent of the cone", () => {
  const joint = { grip: 60 * mm, headDiameter: 19 * mm, outerDiameter: 60 * mm, into: "thread" } as const;
  test("is about 0.6 in wide parts, and grows with their width", () => {
    near(pressureConeTangent(joint), 0.6, 0.03);
    near(pressureConeTangent({ ...joint, into: "nut" }), 0.55, 0.03);
    expect(pressureConeTangent({ ...joint, outerDiameter: 20 * mm })).toBeLessThan(
      pressureConeTangent(joint),
    );
  });
  test("boundary", () => {
    refuses(() => pressureConeTangent({ ...joint, outerDiameter: 18 * mm }), "outerDiameter");
    refuses(() => pressureConeTangent({ ...joint, into: "nut", grip: 1e-9 }), "grip");
    refusesNonFinite(pressureConeTangent, joint);
  });
});
