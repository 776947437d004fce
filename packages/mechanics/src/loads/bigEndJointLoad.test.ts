import { test } from "vitest";
import {
  kN,
  near,
  nearly,
  offsetCrank,
  refuses,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { bigEndJointLoad, jointLoadPerBolt } from "./bigEndJointLoad.ts";
import { inertiaForceAtTopDeadCentre } from "./inertiaForceAtTopDeadCentre.ts";

const input = {
  crank: offsetCrank,
  reciprocatingMass: 0.634,
  rotatingMass: 0.4051,
  capMass: 0.165,
  angularSpeed: 8200 * rpm,
};

test("a cap as heavy as the rotating mass leaves the inertia of the reciprocating mass", () => {
  nearly(bigEndJointLoad({ ...input, capMass: input.rotatingMass }), inertiaForceAtTopDeadCentre(input));
  // By hand: 0.634 kg x 45 930 m/s2 + 0.2401 kg x 0.047 m x (858.7 rad/s)^2.
  near(bigEndJointLoad(input) / kN, 29.12 + 8.321, 0.01);
  near(bigEndJointLoad({ ...input, capMass: 0.185 }) / kN, 36.743, 5e-3);
});

test("bolts share the load, prying raises it", () => {
  const joint = { jointLoad: 36.7 * kN, bolts: 2, pryingFactor: 1.3 };
  nearly(jointLoadPerBolt(joint), 23.855 * kN);
  refuses(() => jointLoadPerBolt({ ...joint, pryingFactor: 0.9 }), "pryingFactor");
  refuses(() => jointLoadPerBolt({ ...joint, bolts: 0 }), "bolts");
  refusesNonFinite(jointLoadPerBolt, joint);
});

test("boundary", () => {
  refuses(() => bigEndJointLoad({ ...input, capMass: 0.5 }), "capMass");
  refusesNonFinite(bigEndJointLoad, input);
});
