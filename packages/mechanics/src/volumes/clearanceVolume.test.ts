import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, cm3, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import {
  type ClearanceVolumes,
  clearanceVolume,
  clearanceVolumeForRatio,
  crownVolumeChangeForStroke,
  crownVolumeForRatio,
} from "./clearanceVolume.ts";
import { compressionRatio } from "./compressionRatio.ts";

const volumes: ClearanceVolumes = {
  chamber: 45 * cm3,
  crown: 16.8 * cm3,
  gasket: 6.0132 * cm3,
  deck: 0.59147 * cm3,
  topLand: 0.6159 * cm3,
  other: 0,
};
const swept = 552.399 * cm3;

test("examples", () => {
  near(clearanceVolume(volumes) / cm3, 69.0206, 5e-5);
  near(clearanceVolumeForRatio({ sweptVolume: swept, compressionRatio: 9.4 }) / cm3, 65.7618, 5e-5);
  near(crownVolumeForRatio({ ...volumes, sweptVolume: swept, compressionRatio: 9.4 }) / cm3, 13.541, 5e-4);
  const change = { bore: 86.5 * mm, strokeChange: 6 * mm, compressionRatio: 9.4 };
  near(crownVolumeChangeForStroke(change) / cm3, 4.1975, 5e-5);
});

test("boundary", () => {
  refuses(() => clearanceVolume({ ...volumes, crown: -70 * cm3 }), "clearance volume");
  refuses(() => clearanceVolume({ ...volumes, chamber: -1 * cm3 }), "chamber");
  refuses(() => clearanceVolumeForRatio({ sweptVolume: swept, compressionRatio: 1 }), "compressionRatio");
  refusesNonFinite(clearanceVolume, volumes);
  refusesNonFinite(clearanceVolumeForRatio, { sweptVolume: swept, compressionRatio: 9.4 });
  const { crown: _, ...rest } = volumes;
  refusesNonFinite(crownVolumeForRatio, { ...rest, sweptVolume: swept, compressionRatio: 9.4 });
  refusesNonFinite(crownVolumeChangeForStroke, {
    bore: 86.5 * mm,
    strokeChange: 6 * mm,
    compressionRatio: 9.4,
  });
});

property.prop([between(5, 18)])("the crown volume for a ratio gives that ratio", (ratio) => {
  const crown = crownVolumeForRatio({ ...volumes, sweptVolume: swept, compressionRatio: ratio });
  nearly(
    compressionRatio({ sweptVolume: swept, clearanceVolume: clearanceVolume({ ...volumes, crown }) }),
    ratio,
  );
});
