import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, kN, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { jointReserve, residualClamp } from "./residualClamp.ts";

const joint = { preload: 46 * kN, bolts: 2, loadFactor: 0.15, jointLoad: 36.7 * kN, pryingFactor: 1.3 };

test("examples and boundary", () => {
  near(residualClamp(joint) / kN, 51.45, 5e-3);
  near(jointReserve({ preload: 37 * kN, bolts: 2, jointLoad: 36.743 * kN }), 2.014, 5e-4);
  refuses(() => residualClamp({ ...joint, loadFactor: 1.1 }), "loadFactor");
  refuses(() => jointReserve({ preload: 37 * kN, bolts: 2, jointLoad: 0 }), "jointLoad");
  refusesNonFinite(residualClamp, joint);
  refusesNonFinite(jointReserve, { preload: 1, bolts: 2, jointLoad: 1 });
});

property.prop([between(1e3, 1e5)])(
  "with no share in the bolts, a reserve of 1 leaves no clamp",
  (preload) => {
    const jointLoad = 2 * preload;
    near(jointReserve({ preload, bolts: 2, jointLoad }), 1, 1e-12);
    near(residualClamp({ preload, bolts: 2, jointLoad, loadFactor: 0, pryingFactor: 1 }), 0, 1e-9);
  },
);
