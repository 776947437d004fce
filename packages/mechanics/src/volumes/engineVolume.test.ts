import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  angles,
  between,
  centredCrank,
  cm3,
  cranks,
  deg,
  mm,
  near,
  nearly,
  offsetCrank,
  refuses,
} from "../check/support.test-support.ts";
import { crankcaseVolumeSwing } from "./crankcaseVolumeSwing.ts";
import { cylinderVolumeAt } from "./cylinderVolumeAt.ts";
import { engineVolume, greatestEngineVolume, sweptTogether } from "./engineVolume.ts";
import { sweptVolume } from "./sweptVolume.ts";

const one = { crank: centredCrank, bore: 86.5 * mm, clearanceVolume: 69.02 * cm3 };
const pins = (...pinAngles: number[]) => pinAngles.map((pin) => ({ pinAngle: pin * deg, bankAngle: 0 }));
const phases = fc.array(fc.record({ pinAngle: angles, bankAngle: angles }), { minLength: 1, maxLength: 8 });

test("a row of four by hand: two up and two down hold the displacement of two, more by the rods' lean half way", () => {
  const four = engineVolume({ ...one, cylinders: pins(0, 180, 180, 0) });
  const swept = sweptVolume({ bore: one.bore, stroke: 94 * mm });
  nearly(four(0), 4 * one.clearanceVolume + 2 * swept);
  // At a quarter turn each stands l + r - sqrt(l^2 - r^2) below its top.
  const travel = 144.5 + 47 - Math.sqrt(144.5 ** 2 - 47 ** 2);
  nearly(four(Math.PI / 2), 4 * one.clearanceVolume + (4 * swept * travel) / 94);
  nearly(greatestEngineVolume({ ...one, cylinders: pins(0, 180, 180, 0) }), four(Math.PI / 2), 1e-9);
});

property.prop([cranks, phases, angles])(
  "the sum of the cylinders, each at its own angle; what it swings by is what the crankcase breathes",
  (crank, cylinders, angle) => {
    const engine = { ...one, crank, cylinders };
    const sum = cylinders
      .map(({ pinAngle, bankAngle }) =>
        cylinderVolumeAt({ ...one, crank, angle: angle + pinAngle - bankAngle }),
      )
      .reduce((all, volume) => all + volume, 0);
    const volume = engineVolume(engine)(angle);
    nearly(volume, sum, 1e-12);
    near(volume - cylinders.length * one.clearanceVolume, sweptTogether(engine)(angle), 1e-15);
    const greatest = greatestEngineVolume(engine);
    expect(volume).toBeLessThanOrEqual(greatest * (1 + 1e-9));
    expect(volume).toBeGreaterThanOrEqual(greatest - crankcaseVolumeSwing(engine) - 1e-9 * greatest);
  },
);

property.prop([phases, between(0.001, 6)], { numRuns: 30 })(
  "with a crankshaft turned on by any angle the greatest stays",
  (cylinders, turn) => {
    const turned = cylinders.map((phase) => ({ ...phase, pinAngle: phase.pinAngle + turn }));
    const engine = { ...one, crank: offsetCrank };
    nearly(
      greatestEngineVolume({ ...engine, cylinders: turned }),
      greatestEngineVolume({ ...engine, cylinders }),
      1e-6,
    );
  },
);

test("boundary", () => {
  refuses(() => engineVolume({ ...one, cylinders: [] }), "cylinders");
  refuses(() => engineVolume({ ...one, clearanceVolume: 0, cylinders: pins(0) }), "clearanceVolume");
  refuses(() => sweptTogether({ ...one, cylinders: pins(Number.NaN) }), "pinAngle");
});
