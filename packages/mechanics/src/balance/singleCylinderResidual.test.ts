import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  angles,
  between,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { shakingHarmonic } from "./shakingHarmonic.ts";
import { singleCylinderResidual, singleCylinderResidualAt } from "./singleCylinderResidual.ts";

const input = {
  reciprocatingMass: 0.472,
  throwRadius: 41 * mm,
  angularSpeed: 10500 * rpm,
  balanceFactor: 0.62,
};

test("example and boundary", () => {
  const found = singleCylinderResidual(input);
  near(found.along, 8891, 0.5);
  near(found.across, 14506, 0.5);
  refuses(() => singleCylinderResidual({ ...input, balanceFactor: 1.1 }), "balanceFactor");
  refuses(() => singleCylinderResidual({ ...input, throwRadius: 0 }), "throwRadius");
  refusesNonFinite(singleCylinderResidual, input);
  refusesNonFinite(singleCylinderResidualAt, { ...input, crankAngle: 1 });
});

property.prop([between(0, 1), angles])(
  "it is the first order of piston and counterweight together",
  (balanceFactor, crankAngle) => {
    const { force } = shakingHarmonic({
      reciprocating: [
        {
          crank: { throwRadius: 41 * mm, rodLength: 138 * mm, pinLineOffset: 0 },
          mass: 0.472,
          pinAngle: 0,
          bankAngle: 0,
          axialPosition: 0,
        },
      ],
      revolving: [{ mass: 0.472 * balanceFactor, radius: 41 * mm, angle: Math.PI, axialPosition: 0 }],
      order: 1,
      angularSpeed: input.angularSpeed,
    });
    const found = singleCylinderResidualAt({ ...input, balanceFactor, crankAngle });
    const value = (i: 0 | 1) => force.cosine[i] * Math.cos(crankAngle) + force.sine[i] * Math.sin(crankAngle);
    near(found.across, value(0), 1e-8);
    near(found.along, value(1), 1e-8);
    near(found.resultant, Math.hypot(value(0), value(1)), 1e-8);
  },
);

property.prop([between(0, 1)])(
  "one half leaves the least of the greatest resultants, turning backwards",
  (balanceFactor) => {
    const greatest = ({ along, across }: { along: number; across: number }) => Math.max(along, across);
    const half = greatest(singleCylinderResidual({ ...input, balanceFactor: 0.5 }));
    expect(greatest(singleCylinderResidual({ ...input, balanceFactor }))).toBeGreaterThanOrEqual(half);
    for (const crankAngle of [0, 0.7, 2]) {
      nearly(singleCylinderResidualAt({ ...input, balanceFactor: 0.5, crankAngle }).resultant, half, 1e-12);
    }
  },
);
