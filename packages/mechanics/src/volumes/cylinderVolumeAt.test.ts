import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  angles,
  cm3,
  cranks,
  mm,
  nearly,
  offsetCrank,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { bottomDeadCentre, topDeadCentre } from "../kinematics/deadCentres.ts";
import { pistonStroke } from "../kinematics/pistonStroke.ts";
import { cylinderVolumeAt } from "./cylinderVolumeAt.ts";
import { sweptVolume } from "./sweptVolume.ts";

const bore = 86.5 * mm;
const clearanceVolume = 69.02 * cm3;

test("the dead centres have the clearance volume, and with it the swept volume", () => {
  const input = { crank: offsetCrank, bore, clearanceVolume, angle: topDeadCentre(offsetCrank).angle };
  nearly(cylinderVolumeAt(input), clearanceVolume);
  nearly(
    cylinderVolumeAt({ ...input, angle: bottomDeadCentre(offsetCrank).angle }),
    clearanceVolume + sweptVolume({ bore, stroke: pistonStroke(offsetCrank) }),
  );
  refuses(() => cylinderVolumeAt({ ...input, clearanceVolume: 0 }), "clearanceVolume");
  refusesNonFinite(cylinderVolumeAt, input);
});

property.prop([cranks, angles])("never below the clearance volume", (crank, angle) => {
  expect(cylinderVolumeAt({ crank, bore, clearanceVolume, angle })).toBeGreaterThanOrEqual(
    clearanceVolume * (1 - 1e-9),
  );
});
