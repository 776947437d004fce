import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { chargeCoolerOutlet, compressorOutletTemperature } from "./chargeTemperature.ts";

const compressor = { inletTemperature: 293, pressureRatio: 2.99, efficiency: 0.7, heatCapacityRatio: 1.4 };
const cooler = { inletTemperature: 447, effectiveness: 0.8, coolantTemperature: 293 };

test("examples and boundary", () => {
  near(compressorOutletTemperature(compressor), 447, 0.5);
  near(chargeCoolerOutlet(cooler), 323.8, 0.05);
  expect(compressorOutletTemperature({ ...compressor, pressureRatio: 1 })).toBe(293);
  refuses(() => compressorOutletTemperature({ ...compressor, efficiency: 1.01 }), "efficiency");
  refuses(() => compressorOutletTemperature({ ...compressor, pressureRatio: 0.99 }), "pressureRatio");
  refuses(() => chargeCoolerOutlet({ ...cooler, effectiveness: 1.01 }), "effectiveness");
  refusesNonFinite(compressorOutletTemperature, compressor);
  refusesNonFinite(chargeCoolerOutlet, cooler);
});

property.prop([between(1.1, 4)])(
  "a perfect cooler gives the coolant back; no compressor runs cooler than ideal",
  (ratio) => {
    nearly(chargeCoolerOutlet({ ...cooler, effectiveness: 1 }), 293);
    const hot = compressorOutletTemperature({ ...compressor, pressureRatio: ratio });
    expect(hot).toBeGreaterThan(
      compressorOutletTemperature({ ...compressor, pressureRatio: ratio, efficiency: 1 }),
    );
  },
);
