import { test } from "vitest";
import { MPa, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { beamCompression, beamTension } from "./beamStress.ts";

const input = { gasForce: 92_849, mass: 0.634, acceleration: 45_930, area: 240e-6 };

test("examples; inertia relieves the compression by the tension it causes", () => {
  near(beamTension(input) / MPa, 121.3, 0.06);
  near(beamCompression({ ...input, acceleration: 0 }) / MPa, 386.9, 0.06);
  nearly(beamCompression(input), beamCompression({ ...input, acceleration: 0 }) - beamTension(input));
});

test("boundary", () => {
  refuses(() => beamTension({ ...input, area: 0 }), "area");
  refuses(() => beamCompression({ ...input, gasForce: -1 }), "gasForce");
  const { gasForce: _, ...tension } = input;
  refusesNonFinite(beamTension, tension);
  refusesNonFinite(beamCompression, input);
});
