import { test } from "@fast-check/vitest";
import { goesAs, solvesBack } from "../check/solvesBack.test-support.ts";
import {
  bar,
  between,
  MPa,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { heldPlateStress, heldPlateThickness } from "./heldPlate.ts";

const crown = { pressure: 158 * bar, radius: 22 * mm, thickness: 7.6 * mm };

test("example", () => near(heldPlateStress(crown) / MPa, 99.3, 0.05));

test.prop([between(1, 250), between(10, 80), between(2, 20)])(
  "solve-back: the thickness for a stress has that stress",
  (pressure, radius, thickness) => {
    const plate = { pressure: pressure * bar, radius: radius * mm, thickness: thickness * mm };
    nearly(heldPlateThickness({ ...plate, stress: heldPlateStress(plate) }), plate.thickness);
  },
);

test("boundary", () => {
  refuses(() => heldPlateStress({ ...crown, thickness: 0 }), "thickness");
  refuses(() => heldPlateThickness({ ...crown, stress: -1 }), "stress");
  refusesNonFinite(heldPlateStress, crown);
  refusesNonFinite(heldPlateThickness, { pressure: 158 * bar, radius: 22 * mm, stress: 100 * MPa });
});

solvesBack(heldPlateStress, {
  pressure: goesAs(1, 6 * MPa, 20 * MPa),
  radius: goesAs(2, 15 * mm, 40 * mm),
  thickness: goesAs(-2, 4 * mm, 14 * mm),
});
solvesBack(heldPlateThickness, {
  pressure: goesAs(0.5, 6 * MPa, 20 * MPa),
  radius: goesAs(1, 15 * mm, 40 * mm),
  stress: goesAs(-0.5, 40 * MPa, 150 * MPa),
});
