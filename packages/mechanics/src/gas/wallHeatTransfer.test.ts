import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  bar,
  between,
  cm3,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { wallGasSpeed, wallHeatTransfer } from "./wallHeatTransfer.ts";

const gas = { bore: 100 * mm, pressure: 50 * bar, temperature: 2000, gasSpeed: 40 };
const motion = {
  meanPistonSpeed: 15,
  sweptVolume: 552 * cm3,
  reference: { pressure: 1 * bar, volume: 490 * cm3, temperature: 340 },
  pressure: 50 * bar,
  motoredPressure: 20 * bar,
};

test("examples and boundary", () => {
  // By hand: 3.26 x 0.1^-0.2 x 5000^0.8 x 2000^-0.55 x 40^0.8 = 3.26 x 1.58489 x 910.28 x 0.0152914 x 19.127.
  near(wallHeatTransfer(gas), 1375.7, 0.5);
  // 2.28 x 15 = 34.2; 0.00324 x 552 x 340 / (1e5 x 490) x 30e5 = 37.23.
  near(wallGasSpeed(motion), 71.43, 0.01);
  nearly(wallGasSpeed({ ...motion, pressure: 10 * bar }), 34.2);
  expect(wallHeatTransfer({ ...gas, gasSpeed: 0 })).toBe(0);
  refuses(() => wallHeatTransfer({ ...gas, bore: 0 }), "bore");
  refuses(() => wallGasSpeed({ ...motion, sweptVolume: 0 }), "sweptVolume");
  refusesNonFinite(wallHeatTransfer, gas);
  refusesNonFinite(wallGasSpeed, motion);
});

property.prop([between(1.1, 5)])("follows the powers of its law", (factor) => {
  const base = wallHeatTransfer(gas);
  nearly(wallHeatTransfer({ ...gas, pressure: factor * gas.pressure }), base * factor ** 0.8);
  nearly(wallHeatTransfer({ ...gas, gasSpeed: factor * gas.gasSpeed }), base * factor ** 0.8);
  nearly(wallHeatTransfer({ ...gas, temperature: factor * gas.temperature }), base * factor ** -0.55);
  nearly(wallHeatTransfer({ ...gas, bore: factor * gas.bore }), base * factor ** -0.2);
});
