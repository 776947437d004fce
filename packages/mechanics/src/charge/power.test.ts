import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, kN, near, nearly, refuses, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { crankPowerFromWheel, torqueFromPower, wheelPowerFromCrank } from "./power.ts";

test("examples", () => {
  near(crankPowerFromWheel({ wheelPower: 640, drivelineLoss: 0.16 }), 761.9, 0.05);
  near(torqueFromPower({ power: 440 * kN, angularSpeed: 7400 * rpm }), 567.8, 0.05);
});

test("boundary", () => {
  refuses(() => crankPowerFromWheel({ wheelPower: 1, drivelineLoss: 1 }), "drivelineLoss");
  refuses(() => torqueFromPower({ power: 1, angularSpeed: 0 }), "angularSpeed");
  refusesNonFinite(crankPowerFromWheel, { wheelPower: 1, drivelineLoss: 0.1 });
  refusesNonFinite(wheelPowerFromCrank, { crankPower: 1, drivelineLoss: 0.1 });
  refusesNonFinite(torqueFromPower, { power: 1, angularSpeed: 1 });
});

property.prop([between(0.01, 0.5)])(
  "wheel to crank and back; adding the percentage is too little",
  (drivelineLoss) => {
    const crankPower = crankPowerFromWheel({ wheelPower: 100, drivelineLoss });
    nearly(wheelPowerFromCrank({ crankPower, drivelineLoss }), 100);
    expect(crankPower).toBeGreaterThan(100 * (1 + drivelineLoss));
  },
);
