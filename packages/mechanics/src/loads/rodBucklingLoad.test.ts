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
import { columnBucklingLoad, rodBucklingLoad } from "./rodBucklingLoad.ts";

const rod = {
  rodLength: 144.5 * mm,
  area: 240e-6,
  secondMomentInPlane: 26_000e-12,
  secondMomentSideways: 9_000e-12,
  elasticModulus: 206 * GPa,
  yieldStrength: 1050 * MPa,
};

test("example", () => {
  const found = rodBucklingLoad(rod);
  near(found.inPlane.load / kN, 245.73, 0.01);
  near(found.inPlane.slenderness, 13.88, 5e-3);
  expect(found.inPlane.formula).toBe("Johnson");
  expect(found.load).toBe(Math.min(found.inPlane.load, found.sideways.load));
});

test("a third and more of the stiffness sideways still suffices, less does not", () => {
  expect(rodBucklingLoad({ ...rod, secondMomentSideways: 6_510e-12 }).plane).toBe("in plane");
  expect(rodBucklingLoad({ ...rod, secondMomentSideways: 6_490e-12 }).plane).toBe("sideways");
});

test("Johnson and Euler meet at half the yield strength", () => {
  const column = {
    area: 240e-6,
    secondMoment: 26_000e-12,
    elasticModulus: 206 * GPa,
    yieldStrength: 1050 * MPa,
  };
  const limit = Math.sqrt((2 * Math.PI ** 2 * column.elasticModulus) / column.yieldStrength);
  const length = limit * Math.sqrt(column.secondMoment / column.area);
  const below = columnBucklingLoad({ ...column, effectiveLength: length * (1 - 1e-9) });
  const above = columnBucklingLoad({ ...column, effectiveLength: length * (1 + 1e-9) });
  expect([below.formula, above.formula]).toEqual(["Johnson", "Euler"]);
  nearly(below.load, (column.area * column.yieldStrength) / 2, 1e-7);
  nearly(above.load, below.load, 1e-7);
  refusesNonFinite(columnBucklingLoad, { ...column, effectiveLength: length });
});

test("boundary", () => {
  refuses(() => rodBucklingLoad({ ...rod, secondMomentSideways: 0 }), "secondMomentSideways");
  refusesNonFinite(rodBucklingLoad, rod);
});

property.prop([between(0.1, 1)])("a longer rod never carries more", (length) => {
  const load = rodBucklingLoad({ ...rod, rodLength: length }).load;
  expect(rodBucklingLoad({ ...rod, rodLength: length * 1.01 }).load).toBeLessThan(load);
});
