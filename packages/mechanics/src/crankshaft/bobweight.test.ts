import { expect, test } from "vitest";
import { near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { bobweight } from "./bobweight.ts";

const input = {
  rods: 2,
  rotatingRodMass: 0.44,
  shellMass: 0.02,
  oilMass: 0.004,
  reciprocatingMass: 0.758,
  balanceFactor: 0.5,
};

test("example and boundary", () => {
  near(bobweight(input), 1.682, 1e-12);
  refuses(() => bobweight({ ...input, balanceFactor: 1.01 }), "balanceFactor");
  refuses(() => bobweight({ ...input, rods: 0 }), "rods");
  refusesNonFinite(bobweight, input);
});

test("half the reciprocating mass balances the primary force of a 90 degree V pair", () => {
  // Primary forces m r w2 cos of each piston's own angle, along its own bank, in units of m r w2.
  let counted = 0;
  for (let theta = 0; theta < 2 * Math.PI; theta += 0.1) {
    const [left, right] = [Math.cos(theta + Math.PI / 4), Math.cos(theta - Math.PI / 4)];
    const x = (right - left) * Math.SQRT1_2;
    const y = (right + left) * Math.SQRT1_2;
    const perPin = bobweight({
      ...input,
      rotatingRodMass: 0,
      shellMass: 0,
      oilMass: 0,
      reciprocatingMass: 1,
    });
    near(x - perPin * Math.sin(theta), 0, 1e-12);
    near(y - perPin * Math.cos(theta), 0, 1e-12);
    counted++;
  }
  expect(counted).toBeGreaterThan(60);
});
