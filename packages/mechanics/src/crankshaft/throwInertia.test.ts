import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import {
  angles,
  centredCrank,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { inertiaChange, throwInertia } from "./throwInertia.ts";

const input = {
  crankInertia: 0.004,
  rods: 1,
  rotatingRodMass: 0.4,
  reciprocatingMass: 0.6,
  throwRadius: 47 * mm,
};

test("examples and boundary", () => {
  nearly(inertiaChange({ massChange: -0.5, radius: 72 * mm }), -0.002592);
  nearly(throwInertia(input), 0.004 + 0.7 * 0.047 ** 2);
  refuses(() => inertiaChange({ massChange: 1, radius: -1 }), "radius");
  refuses(() => throwInertia({ ...input, rods: 0 }), "rods");
  refusesNonFinite(throwInertia, input);
  refusesNonFinite(inertiaChange, { massChange: 1, radius: 1 });
});

property.prop([angles])("half the reciprocating mass is the mean over a turn for a long rod", (start) => {
  // With a long rod the piston's speed is r w sin(theta): averaged over the turn sin^2 is one half.
  let sum = 0;
  for (let i = 0; i < 360; i++) sum += Math.sin(start + (i * Math.PI) / 180) ** 2 / 360;
  const share = throwInertia({ ...input, crankInertia: 0, rotatingRodMass: 0, reciprocatingMass: 1 });
  near(share / centredCrank.throwRadius ** 2, sum, 1e-12);
});
