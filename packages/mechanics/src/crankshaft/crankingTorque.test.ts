import { test } from "@fast-check/vitest";
import { expect } from "vitest";
import {
  bar,
  between,
  centredCrank,
  cm3,
  deg,
  mm,
  near,
  nearly,
  offsetCrank,
} from "../check/support.test-support.ts";
import { boreArea } from "../volumes/boreArea.ts";
import { cylinderVolumeAt } from "../volumes/cylinderVolumeAt.ts";
import { trappedVolume } from "../volumes/trappedVolume.ts";
import { crankingTorque } from "./crankingTorque.ts";

const engine = {
  crank: offsetCrank,
  bore: 86.5 * mm,
  clearanceVolume: 69.02 * cm3,
  inletClosing: 68 * deg,
  ambientPressure: 1 * bar,
};

test("example", () => near(crankingTorque({ ...engine, ambientPressure: 0.96 * bar }).torque, 86.99, 0.005));

test.prop([between(0, 90), between(40, 120)])(
  "is the greatest of the torques by rod angle, sampled",
  (closing, clearance) => {
    const one = {
      ...engine,
      crank: centredCrank,
      inletClosing: closing * deg,
      clearanceVolume: clearance * cm3,
    };
    const { throwRadius: r, rodLength: l } = centredCrank;
    const trapped = trappedVolume(one);
    let best = 0;
    for (let at = closing * deg - Math.PI; at <= 0; at += 0.1 * deg) {
      const phi = Math.asin((r / l) * Math.sin(at));
      const pressure = bar * (trapped / cylinderVolumeAt({ ...one, angle: at })) ** 1.25;
      best = Math.max(
        best,
        (-(pressure - bar) * boreArea(one.bore) * r * Math.sin(at + phi)) / Math.cos(phi),
      );
    }
    nearly(crankingTorque(one).torque, best, 1e-5);
  },
);

test.prop([between(30, 60)])(
  "less clearance takes more torque, and it peaks before top dead centre",
  (clearance) => {
    const at = (volume: number) => crankingTorque({ ...engine, clearanceVolume: volume * cm3 });
    expect(at(clearance).torque).toBeGreaterThan(at(clearance + 5).torque);
    expect(at(clearance).angle).toBeLessThan(0);
  },
);
