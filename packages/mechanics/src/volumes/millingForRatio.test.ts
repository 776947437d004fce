import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, cm3, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { chamberVolumeChangeByMilling } from "./chamberVolumeChangeByMilling.ts";
import { compressionRatio } from "./compressionRatio.ts";
import { millingForRatio } from "./millingForRatio.ts";

const head = {
  sweptVolume: 552.399 * cm3,
  clearanceVolume: 69.0206 * cm3,
  compressionRatio: 9.4,
  faceArea: 47e-4,
};

test("example and boundary", () => {
  // 69.0206 - 65.7618 = 3.2588 cm3 over 47 cm2.
  near(millingForRatio(head) / mm, 0.69337, 5e-5);
  refuses(() => millingForRatio({ ...head, faceArea: 0 }), "faceArea");
  refuses(() => millingForRatio({ ...head, compressionRatio: 1 }), "compressionRatio");
  refusesNonFinite(millingForRatio, head);
});

property.prop([between(9.1, 16)])("a head milled so has the ratio", (wanted) => {
  const milledDepth = millingForRatio({ ...head, compressionRatio: wanted });
  const change = chamberVolumeChangeByMilling({ faceArea: head.faceArea, milledDepth });
  nearly(
    compressionRatio({ sweptVolume: head.sweptVolume, clearanceVolume: head.clearanceVolume + change }),
    wanted,
  );
});
