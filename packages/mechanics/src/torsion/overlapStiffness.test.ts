import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, GPa, mm, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { overlapSection, overlapStiffness } from "./overlapStiffness.ts";

const base = { journalDiameter: 57 * mm, crankpinDiameter: 48 * mm, throwRadius: 30 * mm };

/** Whether a point lies in both circles, the journal's middle at the origin. */
const covers = ({ journalDiameter, crankpinDiameter, throwRadius }: typeof base, x: number, y: number) =>
  Math.hypot(x, y) < journalDiameter / 2 && Math.hypot(x - throwRadius, y) < crankpinDiameter / 2;

/** Area, polar moment and torsion constant of the lens by a net of points: twice the sum of Prandtl's function. */
function byNet(section: typeof base, points: number) {
  const size = section.crankpinDiameter;
  const left = section.throwRadius - section.crankpinDiameter / 2;
  const step = size / (points - 1);
  const at = (i: number) => [left + (i % points) * step, Math.floor(i / points) * step - size / 2] as const;
  const inside = Array.from({ length: points ** 2 }, (_, i) => i).filter((i) => covers(section, ...at(i)));
  const phi = new Float64Array(points ** 2);
  for (let round = 0; round < 4 * points; round++)
    for (const i of inside) {
      const around = phi[i - 1]! + phi[i + 1]! + phi[i - points]! + phi[i + points]!;
      phi[i]! += 1.9 * ((around + 2 * step ** 2) / 4 - phi[i]!);
    }
  const sum = (one: (x: number, y: number, i: number) => number) =>
    inside.reduce((all, i) => all + one(...at(i), i), 0) * step ** 2;
  const area = sum(() => 1);
  const middle = sum((x) => x) / area;
  return {
    area,
    polarMoment: sum((x, y) => (x - middle) ** 2 + y ** 2),
    torsionConstant: 2 * sum((_x, _y, i) => phi[i]!),
  };
}

test.each([10, 20, 30, 40])("a throw of %i mm: the lens against a net of points", (throwRadius) => {
  const section = { ...base, throwRadius: throwRadius * mm };
  const [found, net] = [overlapSection(section), byNet(section, 161)];
  nearly(found.area, net.area, 0.02);
  nearly(found.polarMoment, net.polarMoment, 0.03);
  // Points on the edge count in part: the net is good to a few per cent for the thinnest lens.
  nearly(found.torsionConstant, net.torsionConstant, 0.06);
});

test("by hand: two equal circles of radius 1 whose middles lie 1 apart cover 2 pi/3 - sqrt(3)/2 together", () => {
  const { area } = overlapSection({ journalDiameter: 2, crankpinDiameter: 2, throwRadius: 1 });
  nearly(area, (2 * Math.PI) / 3 - Math.sqrt(3) / 2);
});

test("boundary", () => {
  expect(overlapSection({ ...base, throwRadius: 52.5 * mm })).toEqual({
    area: 0,
    polarMoment: 0,
    torsionConstant: 0,
  });
  const whole = { ...base, webThickness: 17 * mm, shearModulus: 80 * GPa };
  refuses(() => overlapSection({ ...base, throwRadius: 0 }), "throwRadius");
  refuses(() => overlapStiffness({ ...whole, webThickness: 0 }), "webThickness");
  refusesNonFinite(overlapSection, base);
  refusesNonFinite(overlapStiffness, whole);
});

property.prop([between(20 * mm, 50 * mm), between(51 * mm, 80 * mm), between(0.01, 0.99)])(
  "a crankpin within the journal is the whole core: the circle's exact torsion, whichever is the larger",
  (small, large, share) => {
    const throwRadius = (share * (large - small)) / 2;
    const { torsionConstant } = overlapSection({
      journalDiameter: large,
      crankpinDiameter: small,
      throwRadius,
    });
    nearly(torsionConstant, (Math.PI * small ** 4) / 32, 1e-9);
    const turned = overlapSection({ journalDiameter: small, crankpinDiameter: large, throwRadius });
    nearly(turned.torsionConstant, torsionConstant, 1e-9);
  },
);

property.prop([between(40 * mm, 70 * mm), between(40 * mm, 70 * mm), between(0.1, 0.98), between(0.5, 3)])(
  "any lens: the same from either side, and of any scale",
  (journalDiameter, crankpinDiameter, share, scale) => {
    const throwRadius = (share * (journalDiameter + crankpinDiameter)) / 2;
    const one = overlapSection({ journalDiameter, crankpinDiameter, throwRadius });
    const turned = overlapSection({
      journalDiameter: crankpinDiameter,
      crankpinDiameter: journalDiameter,
      throwRadius,
    });
    nearly(turned.torsionConstant, one.torsionConstant, 1e-6);
    const web = { webThickness: 17 * mm, shearModulus: 80 * GPa };
    const sized = (by: number) =>
      overlapStiffness({
        journalDiameter: by * journalDiameter,
        crankpinDiameter: by * crankpinDiameter,
        throwRadius: by * throwRadius,
        ...web,
      });
    nearly(sized(scale), sized(1) * scale ** 4, 1e-6);
  },
);
