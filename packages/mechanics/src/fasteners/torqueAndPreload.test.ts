import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, kN, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { threadGeometry } from "./threadGeometry.ts";
import { nutFactor, preloadFromTorque, threadTorque, torqueForPreload } from "./torqueAndPreload.ts";

const { pitch, pitchDiameter } = threadGeometry({ majorDiameter: 11 * mm, pitch: 1.25 * mm });
const friction = {
  pitch,
  pitchDiameter,
  threadFriction: 0.11,
  headFriction: 0.11,
  headFrictionDiameter: 15.5 * mm,
};

test("examples", () => {
  const preload = preloadFromTorque({ ...friction, torque: 115 });
  near(preload / kN, 67.708, 5e-4);
  near(nutFactor({ torque: 115, preload, majorDiameter: 11 * mm }), 0.1544, 5e-5);
});

test("without friction the torque is the lead of the thread alone", () => {
  nearly(
    torqueForPreload({ ...friction, preload: 1, threadFriction: 0, headFriction: 0 }),
    pitch / (2 * Math.PI),
  );
});

test("boundary", () => {
  refuses(() => preloadFromTorque({ ...friction, torque: -1 }), "torque");
  refuses(() => torqueForPreload({ ...friction, preload: 1, threadFriction: -0.1 }), "threadFriction");
  refusesNonFinite(preloadFromTorque, { ...friction, torque: 115 });
  refusesNonFinite(torqueForPreload, { ...friction, preload: 1 });
  refusesNonFinite(threadTorque, { pitch, pitchDiameter, threadFriction: 0.11, preload: 1 });
  refusesNonFinite(nutFactor, { torque: 115, preload: 1, majorDiameter: 11 * mm });
});

property.prop([between(1, 200)])(
  "torque to preload and back; the head takes the rest of the torque",
  (torque) => {
    const preload = preloadFromTorque({ ...friction, torque });
    nearly(torqueForPreload({ ...friction, preload }), torque);
    const head = (friction.headFriction * friction.headFrictionDiameter * preload) / 2;
    nearly(threadTorque({ ...friction, preload }) + head, torque);
  },
);
