import { test } from "@fast-check/vitest";
import {
  between,
  MPa,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { discStress } from "./discStress.ts";

const flywheel = {
  outerRadius: 125 * mm,
  holeRadius: 30 * mm,
  density: 7850,
  poissonRatio: 0.3,
  angularSpeed: 8200 * rpm,
};

test("example: a steel flywheel", () => near(discStress(flywheel) / MPa, 75.31, 0.3));

test.prop([between(0.02, 0.98)])(
  "its mean over the section balances half the disc's centrifugal force",
  (hole) => {
    // Hoop stress over the radius (Lamé's rotating disc), integrated: 2 ∫ sigma dr = ∫ rho omega^2 r^2 · 2 dr.
    const { outerRadius: R, density, poissonRatio: nu, angularSpeed } = flywheel;
    const r = hole * R;
    const k = ((3 + nu) / 8) * density * angularSpeed ** 2;
    const hoop = (x: number) =>
      k * (R ** 2 + r ** 2 + ((R * r) / x) ** 2 - ((1 + 3 * nu) / (3 + nu)) * x ** 2);
    nearly(discStress({ ...flywheel, holeRadius: r }), hoop(r), 1e-12);
    const cells = 4000;
    const step = (R - r) / cells;
    let held = 0;
    for (let i = 0; i < cells; i++) held += hoop(r + (i + 0.5) * step) * step;
    nearly(held, (density * angularSpeed ** 2 * (R ** 3 - r ** 3)) / 3, 1e-5);
  },
);

test.prop([between(1.01, 3)])("it grows with the square of the speed", (times) =>
  nearly(
    discStress({ ...flywheel, angularSpeed: times * flywheel.angularSpeed }),
    times ** 2 * discStress(flywheel),
  ),
);

test("a ring as thin as a band carries rho v^2", () =>
  nearly(
    discStress({ ...flywheel, holeRadius: 124.9999 * mm }),
    7850 * (flywheel.angularSpeed * 0.125) ** 2,
    1e-5,
  ));

test("refusals", () => {
  refuses(() => discStress({ ...flywheel, holeRadius: 125 * mm }), "holeRadius");
  refusesNonFinite(discStress, flywheel);
});
