import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, GPa, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { steppedShaftStiffness } from "./equivalentShaftLength.ts";
import {
  throwStiffness,
  throwStiffnessCarter,
  throwStiffnessKerWilson,
  throwStiffnessThroughOverlap,
} from "./throwStiffness.ts";

const base = {
  journalLength: 24 * mm,
  journalDiameter: 57 * mm,
  journalBore: 0,
  crankpinLength: 22.05 * mm,
  crankpinDiameter: 48 * mm,
  crankpinBore: 0,
  webThickness: 17 * mm,
  webWidth: 90 * mm,
  throwRadius: 47 * mm,
  shearModulus: 80 * GPa,
};

test("the invented four-in-line, V8 and flat twin", () => {
  near(throwStiffnessCarter(base), 635128, 0.5);
  near(throwStiffnessKerWilson(base), 549147, 0.5);
  const eight = {
    ...base,
    journalLength: 28 * mm,
    journalDiameter: 65 * mm,
    crankpinLength: 48.1 * mm,
    crankpinDiameter: 53.34 * mm,
    webThickness: 20 * mm,
    webWidth: 108 * mm,
    throwRadius: 46 * mm,
  };
  near(throwStiffnessCarter(eight), 813031, 0.5);
  near(throwStiffnessKerWilson(eight), 628860, 0.5);
  const twin = {
    ...base,
    journalLength: 30 * mm,
    journalDiameter: 40 * mm,
    crankpinLength: 26.25 * mm,
    crankpinDiameter: 38 * mm,
    crankpinBore: 12 * mm,
    webThickness: 16 * mm,
    webWidth: 70 * mm,
    throwRadius: 34 * mm,
  };
  near(throwStiffnessCarter(twin), 220938, 0.5);
  near(throwStiffnessKerWilson(twin), 189710, 0.5);
});

test("boundary", () => {
  for (const stiffness of [throwStiffnessCarter, throwStiffnessKerWilson]) {
    refusesNonFinite(stiffness, base);
    refuses(() => stiffness({ ...base, webWidth: 0 }), "webWidth");
    refuses(() => stiffness({ ...base, crankpinBore: base.crankpinDiameter }), "crankpinBore");
    refuses(() => stiffness({ ...base, journalBore: -1e-3 }), "journalBore");
  }
  const overlapping = { ...base, throwRadius: 21 * mm };
  expect(throwStiffnessCarter(overlapping)).toBeGreaterThan(0);
  refuses(() => throwStiffnessKerWilson(overlapping), "throwRadius");
});

property.prop([between(0.5, 3)])(
  "a throw of any scale: stiffness goes with the cube of the size",
  (scale) => {
    const scaled = Object.fromEntries(
      Object.entries(base).map(([key, value]) => [key, key === "shearModulus" ? value : value * scale]),
    ) as typeof base;
    for (const stiffness of [throwStiffnessCarter, throwStiffnessKerWilson]) {
      nearly(stiffness(scaled), stiffness(base) * scale ** 3, 1e-12);
    }
  },
);

property.prop([between(1.001, 1.5)])("more throw or more bore is softer, more web is stiffer", (factor) => {
  for (const stiffness of [throwStiffnessCarter, throwStiffnessKerWilson]) {
    expect(stiffness({ ...base, throwRadius: base.throwRadius * factor })).toBeLessThan(stiffness(base));
    expect(stiffness({ ...base, webWidth: base.webWidth * factor })).toBeGreaterThan(stiffness(base));
    expect(stiffness({ ...base, crankpinBore: 20 * mm * factor })).toBeLessThan(stiffness(base));
  }
});

property.prop([between(40 * mm, 70 * mm), between(0, 0.6)])(
  "a crankpin of the journal's size and no throw: the plain shaft",
  (diameter, share) => {
    const shaft = {
      ...base,
      journalDiameter: diameter,
      crankpinDiameter: diameter,
      journalBore: share * diameter,
      throwRadius: 1e-6 * mm,
    };
    const segments = [
      { length: base.journalLength, diameter, boreDiameter: share * diameter },
      { length: base.crankpinLength + 2 * base.webThickness, diameter, boreDiameter: 0 },
    ];
    nearly(
      throwStiffnessThroughOverlap(shaft),
      steppedShaftStiffness({ segments, shearModulus: base.shearModulus }),
      1e-6,
    );
  },
);

property.prop([between(5 * mm, 60 * mm), between(0, 2 * mm)])(
  "a smaller throw is stiffer through the overlap, and no throw is taken as softer than its overlap",
  (throwRadius, more) => {
    const [near, far] = [throwRadius, throwRadius + more].map((radius) => ({ ...base, throwRadius: radius }));
    expect(throwStiffnessThroughOverlap(far!)).toBeLessThanOrEqual(throwStiffnessThroughOverlap(near!));
    expect(throwStiffness(far!)).toBeLessThanOrEqual(throwStiffness(near!));
    expect(throwStiffness(near!)).toBeGreaterThanOrEqual(throwStiffnessThroughOverlap(near!));
    const apart = throwRadius >= (base.journalDiameter + base.crankpinDiameter) / 2;
    expect(throwStiffnessThroughOverlap(near!) === 0).toBe(apart);
  },
);

test("an overlap that leaves Ker Wilson no web is estimated all the same, without a jump", () => {
  const at = (throwRadius: number) => throwStiffness({ ...base, throwRadius });
  const edge = 0.2 * (base.journalDiameter + base.crankpinDiameter);
  nearly(at(edge - 1e-9), at(edge + 1e-9), 1e-6);
  // Little overlap: the mean of the two published formulas, by hand.
  near(throwStiffness(base), (635128 + 549147) / 2, 0.5);
  // Thin narrow webs that are nearly all overlap: the core outdoes both.
  const slight = { ...base, throwRadius: 15 * mm, webWidth: 60 * mm, webThickness: 8 * mm };
  expect(throwStiffness(slight)).toBe(throwStiffnessThroughOverlap(slight));
  refuses(() => throwStiffnessThroughOverlap({ ...base, webThickness: 0 }), "webThickness");
  refusesNonFinite(throwStiffness, base);
});
