import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import {
  between,
  deg,
  kN,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { tighteningAngle } from "./joint.ts";
import { preloadFromAngle } from "./preloadFromAngle.ts";

const joint = { boltCompliance: 3.7e-9, clampedCompliance: 0.8e-9, pitch: 1.058 * mm };

test("own check line the other way: 70.43° from nothing gives 46 kN", () => {
  near(preloadFromAngle({ ...joint, snugPreload: 0, angle: 70.43 * deg }) / kN, 46, 5e-3);
  refuses(() => preloadFromAngle({ ...joint, snugPreload: -1, angle: 1 }), "snugPreload");
  refusesNonFinite(preloadFromAngle, { ...joint, snugPreload: 10 * kN, angle: 1 });
});

property.prop([between(0, 3e4), between(0, 6e4)])(
  "the angle of a preload gives it back",
  (snugPreload, gain) => {
    const angle = tighteningAngle({ ...joint, preload: gain });
    nearly(preloadFromAngle({ ...joint, snugPreload, angle }), snugPreload + gain);
  },
);
