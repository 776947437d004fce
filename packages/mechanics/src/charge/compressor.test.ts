import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { bar, between, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { compressorOutletTemperature } from "./chargeTemperature.ts";
import { compressorPower, compressorPressureRatio } from "./compressor.ts";

const pressures = { manifoldPressure: 2.9 * bar, ambientPressure: 0.97 * bar, inletLoss: 0, outletLoss: 0 };
const drive = { airMassFlow: 0.42, inletTemperature: 293, outletTemperature: 447, mechanicalEfficiency: 1 };

test("examples and boundary", () => {
  near(compressorPressureRatio(pressures), 2.99, 5e-3);
  near(compressorPressureRatio({ ...pressures, inletLoss: 0.03 * bar, outletLoss: 0.1 * bar }), 3.191, 5e-4);
  // 0.42 x 1005 x 154 = 65.0 kW.
  near(compressorPower(drive), 65_003, 1);
  expect(compressorPower({ ...drive, outletTemperature: 293 })).toBe(0);
  refuses(() => compressorPressureRatio({ ...pressures, inletLoss: 0.97 * bar }), "inletLoss");
  refuses(() => compressorPower({ ...drive, outletTemperature: 290 }), "outletTemperature");
  refuses(() => compressorPower({ ...drive, mechanicalEfficiency: 1.1 }), "mechanicalEfficiency");
  refusesNonFinite(compressorPressureRatio, pressures);
  refusesNonFinite(compressorPower, drive);
});

property.prop([between(1.1, 4), between(0.4, 1)])(
  "an ideal compressor takes the least power, the work of an isentrope",
  (pressureRatio, efficiency) => {
    const power = (eta: number) =>
      compressorPower({
        ...drive,
        outletTemperature: compressorOutletTemperature({
          inletTemperature: 293,
          pressureRatio,
          efficiency: eta,
          heatCapacityRatio: 1.4,
        }),
      });
    nearly(power(1), 0.42 * 1005 * 293 * (pressureRatio ** (0.4 / 1.4) - 1));
    nearly(power(efficiency), power(1) / efficiency);
  },
);
