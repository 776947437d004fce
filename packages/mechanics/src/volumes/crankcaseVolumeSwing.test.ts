import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  between,
  centredCrank,
  cranks,
  deg,
  mm,
  near,
  nearly,
  refuses,
} from "../check/support.test-support.ts";
import { pistonStroke } from "../kinematics/pistonStroke.ts";
import { pistonTravel } from "../kinematics/pistonTravel.ts";
import { boreArea } from "./boreArea.ts";
import { crankcaseVolumeSwing } from "./crankcaseVolumeSwing.ts";

const bore = 86.5 * mm;
const swept = boreArea(bore) * pistonStroke(centredCrank);
const at = (pinAngle: number, bankAngle = 0) => ({ pinAngle: pinAngle * deg, bankAngle: bankAngle * deg });
const swing = (...cylinders: ReturnType<typeof at>[]) =>
  crankcaseVolumeSwing({ crank: centredCrank, bore, cylinders });

test("a single, a flat twin and a parallel twin", () => {
  nearly(swing(at(0)), swept);
  // Throws half a turn apart, cylinders opposed: both pistons come in together.
  nearly(swing(at(0), at(180, 180)), 2 * swept);
  nearly(swing(at(0), at(0)), 2 * swept);
});

test("a row of four breathes by its second order alone", () => {
  // Two pairs half a turn apart: 4 A times the swing of half the sum of l cos(phi) over a turn.
  const { throwRadius: r, rodLength: l } = centredCrank;
  const second = l - Math.sqrt(l * l - r * r);
  nearly(swing(at(0), at(180), at(180), at(0)), 4 * boreArea(bore) * second);
  expect(swing(at(0), at(180), at(180), at(0))).toBeLessThan(0.7 * swept);
});

test("a row of three at 120 degrees breathes little", () => {
  expect(swing(at(0), at(120), at(240))).toBeLessThan(0.01 * swept);
});

test("no cylinder, no swing", () => {
  refuses(() => crankcaseVolumeSwing({ crank: centredCrank, bore, cylinders: [] }), "cylinders");
  refuses(() => swing({ pinAngle: Number.NaN, bankAngle: 0 }), "pinAngle");
});

const layouts = fc.array(fc.record({ pinAngle: between(0, 6), bankAngle: between(0, 6) }), {
  minLength: 1,
  maxLength: 12,
});
property.prop([cranks, layouts, between(0, 6)])(
  "never beyond all pistons together, at least what sampling finds, and the same however the crank is turned",
  (crank, cylinders, turned) => {
    const found = crankcaseVolumeSwing({ crank, bore, cylinders });
    const all = cylinders.length * boreArea(bore) * pistonStroke(crank);
    expect(found).toBeLessThanOrEqual(all * (1 + 1e-9));
    const sampled = Array.from({ length: 97 }, (_, i) =>
      cylinders.reduce(
        (sum, { pinAngle, bankAngle }) =>
          sum + pistonTravel(crank, (i / 97) * 2 * Math.PI + pinAngle - bankAngle),
        0,
      ),
    );
    const least = boreArea(bore) * (Math.max(...sampled) - Math.min(...sampled));
    expect(found).toBeGreaterThanOrEqual(least * (1 - 1e-9) - 1e-15);
    expect(found).toBeLessThanOrEqual(least + 0.01 * all);
    const other = cylinders.map((one) => ({ ...one, pinAngle: one.pinAngle + turned }));
    near(crankcaseVolumeSwing({ crank, bore, cylinders: other }), found, 1e-7 * all);
  },
);
