import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, deg, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { camRetardByMilling } from "./camRetardByMilling.ts";

const cut = { removedHeight: 0.2 * mm, runAngle: 0, crankSprocketRadius: 29 * mm };

test("example", () => {
  near(camRetardByMilling(cut) / deg, 0.395, 5e-4);
  nearly(camRetardByMilling({ ...cut, runAngle: 60 * deg }), camRetardByMilling(cut) / 2, 1e-12);
});

property.prop([between(0, 5e-4), between(0, 1.2)])(
  "is the angle that the shorter run unwinds from the camshaft's sprocket, twice as large, at the crankshaft",
  (removedHeight, runAngle) => {
    // Run between two points 250 mm apart, one of them lowered along the cylinder.
    const across = 0.25 * Math.sin(runAngle);
    const shorter = 0.25 - Math.hypot(across, 0.25 * Math.cos(runAngle) - removedHeight);
    const camAngle = shorter / (2 * cut.crankSprocketRadius);
    // Within what the run's own turning changes in second order.
    near(camRetardByMilling({ ...cut, removedHeight, runAngle }), 2 * camAngle, 2e-5);
  },
);

test("boundary", () => {
  refuses(() => camRetardByMilling({ ...cut, runAngle: 90 * deg }), "runAngle");
  refuses(() => camRetardByMilling({ ...cut, removedHeight: -1e-9 }), "removedHeight");
  refuses(() => camRetardByMilling({ ...cut, crankSprocketRadius: 0 }), "crankSprocketRadius");
  refusesNonFinite(camRetardByMilling, cut);
});
