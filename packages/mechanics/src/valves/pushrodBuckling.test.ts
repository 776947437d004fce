import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  between,
  GPa,
  kN,
  MPa,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { pushrodBucklingLoad, pushrodReserve } from "./pushrodBuckling.ts";

const pushrod = {
  outerDiameter: 9.5 * mm,
  wall: 2.1 * mm,
  length: 195 * mm,
  elasticModulus: 206 * GPa,
  yieldStrength: 900 * MPa,
};

test("examples", () => {
  const { load, formula } = pushrodBucklingLoad(pushrod);
  near(load / kN, 19.31, 5e-3);
  expect(formula).toBe("Euler");
  const reserve = { bucklingLoad: load, openForce: 2400, rockerRatio: 1.6, dynamicFactor: 2 };
  near(pushrodReserve(reserve), 2.514, 5e-4);
  near(pushrodReserve({ ...reserve, openForce: 2430 }), 2.483, 5e-4);
});

test("a soft or short pushrod yields before Euler's load", () => {
  const short = pushrodBucklingLoad({ ...pushrod, length: 110 * mm });
  expect(short.formula).toBe("Johnson");
  expect(short.load).toBeLessThan(pushrodBucklingLoad(pushrod).load * (195 / 110) ** 2);
});

property.prop([between(0.15, 0.3), between(0.3e-3, 4.7e-3)])(
  "a slender tube is a solid rod less its bore",
  (length, wall) => {
    const euler = (diameter: number) => (Math.PI ** 3 * 206 * GPa * diameter ** 4) / 64 / length ** 2;
    // A yield strength no steel has keeps every one of these tubes slender.
    const found = pushrodBucklingLoad({ ...pushrod, length, wall, yieldStrength: 1e5 * MPa });
    expect(found.formula).toBe("Euler");
    nearly(found.load, euler(9.5 * mm) - euler(9.5 * mm - 2 * wall), 1e-9);
    expect(pushrodBucklingLoad({ ...pushrod, length, wall }).load).toBeLessThanOrEqual(
      found.load * (1 + 1e-12),
    );
  },
);

test("boundary", () => {
  expect(() => pushrodBucklingLoad({ ...pushrod, wall: 4.75 * mm })).not.toThrow();
  refuses(() => pushrodBucklingLoad({ ...pushrod, wall: 4.8 * mm }), "wall");
  refuses(() => pushrodBucklingLoad({ ...pushrod, wall: 0 }), "wall");
  refuses(() => pushrodBucklingLoad({ ...pushrod, length: 0 }), "length");
  const reserve = { bucklingLoad: 1, openForce: 1, rockerRatio: 1, dynamicFactor: 2 };
  refuses(() => pushrodReserve({ ...reserve, dynamicFactor: 0.99 }), "dynamicFactor");
  refuses(() => pushrodReserve({ ...reserve, openForce: 0 }), "openForce");
  refusesNonFinite(pushrodBucklingLoad, pushrod);
  refusesNonFinite(pushrodReserve, reserve);
  nearly(pushrodReserve(reserve), 0.5);
});
