import { test } from "vitest";
import { GPa, mm, near, offsetCrank, refuses, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { greatestPistonAcceleration } from "../kinematics/greatestPistonAcceleration.ts";
import { rodStretch } from "./rodStretch.ts";

test("example and boundary", () => {
  const input = {
    pistonGroupMass: 0.464,
    smallEndMass: 0.17,
    acceleration: greatestPistonAcceleration(offsetCrank, 7800 * rpm).acceleration,
    rodLength: 144.5 * mm,
    elasticModulus: 206 * GPa,
    beamArea: 240e-6,
  };
  near(rodStretch(input) / mm, 0.06668, 5e-6);
  refuses(() => rodStretch({ ...input, beamArea: 0 }), "beamArea");
  refusesNonFinite(rodStretch, input);
});
