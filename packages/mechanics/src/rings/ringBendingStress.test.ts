import { test } from "@fast-check/vitest";
import { goesAs, solvesBack } from "../check/solvesBack.test-support.ts";
import { between, MPa, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { ringBendingStress } from "./ringBendingStress.ts";

const ring = { pressure: 0.2 * MPa, bore: 86.5 * mm, radialThickness: 3.2 * mm };

test("example", () => near(ringBendingStress(ring) / MPa, 438.4, 0.05));

test.prop([between(0.05, 1), between(50, 200), between(1.5, 6)])(
  "is that of half a thin ring bent by its pressure: M over h t^2 / 6",
  (pressure, bore, thickness) => {
    const [p, D, t, h] = [pressure * MPa, bore * mm, thickness * mm, 1.2 * mm];
    // About the back: p h D/2 on each element of half the ring, times its lever, summed over half a turn.
    const moment = (p * h * D ** 2) / 2;
    nearly(ringBendingStress({ pressure: p, bore: D, radialThickness: t }), moment / ((h * t ** 2) / 6));
  },
);

test("boundary", () => {
  refuses(() => ringBendingStress({ ...ring, radialThickness: 0 }), "radialThickness");
  refusesNonFinite(ringBendingStress, ring);
});

solvesBack(ringBendingStress, {
  pressure: goesAs(1, 0.05 * MPa, 1 * MPa),
  bore: goesAs(2, 50 * mm, 200 * mm),
  radialThickness: goesAs(-2, 1.5 * mm, 6 * mm),
});
