import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { between, GPa, MPa, mm, nearly, um } from "../check/support.test-support.ts";
import { pressFitHoopStress, pressFitPressure, pressFitTorque } from "./pressFit.ts";

const ring = (elasticModulus: number, poissonRatio: number) => ({ elasticModulus, poissonRatio });
solvesBack(
  pressFitPressure,
  {
    interference: goesAs(1, 5 * um, 60 * um),
    diameter: falls(20 * mm, 30 * mm),
    outerDiameter: rises(40 * mm, 90 * mm),
    innerBore: falls(1 * mm, 8 * mm),
    outerModulus: rises(70 * GPa, 210 * GPa),
    outerPoisson: falls(0.2, 0.35),
    innerModulus: rises(70 * GPa, 210 * GPa),
    innerPoisson: rises(0.2, 0.35),
  },
  ({ outerModulus, outerPoisson, innerModulus, innerPoisson, ...sizes }) =>
    pressFitPressure({
      ...sizes,
      outer: ring(outerModulus, outerPoisson),
      inner: ring(innerModulus, innerPoisson),
    }),
);
solvesBack(pressFitTorque, {
  pressure: goesAs(1, 5 * MPa, 150 * MPa),
  diameter: goesAs(2, 20 * mm, 60 * mm),
  length: goesAs(1, 10 * mm, 50 * mm),
  friction: goesAs(1, 0.08, 0.2),
});
solvesBack(pressFitHoopStress, {
  pressure: goesAs(1, 5 * MPa, 150 * MPa),
  diameter: rises(20 * mm, 40 * mm),
  outerDiameter: falls(45 * mm, 90 * mm),
});

property.prop([between(5 * mm, 60 * mm), between(1.05, 4), between(MPa, 200 * MPa)])(
  "the hoop stress carries the pressure over any half of the ring, as a thin ring's does in the end",
  (diameter, ratio, pressure) => {
    const stress = pressFitHoopStress({ pressure, diameter, outerDiameter: ratio * diameter });
    // The greatest stress lies above the mean that balances the pressure, p D / (D_o - D).
    expect(stress).toBeGreaterThan(pressure / (ratio - 1));
    const thin = pressFitHoopStress({ pressure, diameter, outerDiameter: diameter * (1 + 1e-6) });
    nearly(thin, pressure / 1e-6, 2e-6);
  },
);

property.prop([between(5 * mm, 60 * mm), between(5 * um, 60 * um)])(
  "friction at the radius of the joint holds the torque",
  (diameter, interference) => {
    const steel = ring(206 * GPa, 0.3);
    const pressure = pressFitPressure({
      interference,
      diameter,
      outerDiameter: 2 * diameter,
      innerBore: 0,
      outer: steel,
      inner: steel,
    });
    // Solid shaft and ring of one metal: p = E delta (1 - (D/D_o)^2) / (2 D).
    nearly(pressure, (206 * GPa * interference * (1 - 1 / 4)) / (2 * diameter));
    const length = 20 * mm;
    const grip = 0.12 * pressure * Math.PI * diameter * length;
    nearly(pressFitTorque({ pressure, diameter, length, friction: 0.12 }), (grip * diameter) / 2);
  },
);
