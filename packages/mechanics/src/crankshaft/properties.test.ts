import { test as property } from "@fast-check/vitest";
import { counted, falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { bar, between, centredCrank, cm3, deg, kN, mm, nearly, rpm } from "../check/support.test-support.ts";
import { bobweight } from "./bobweight.ts";
import { crankingTorque } from "./crankingTorque.ts";
import { discStress } from "./discStress.ts";
import { flangeTorque } from "./flangeTorque.ts";
import { journalOverlap } from "./journalOverlap.ts";
import { residualUnbalance } from "./residualUnbalance.ts";
import { inertiaChange, throwInertia } from "./throwInertia.ts";
import { windagePower } from "./windagePower.ts";

solvesBack(bobweight, {
  rods: counted(rises(1, 3)),
  rotatingRodMass: rises(0.2, 0.6),
  shellMass: rises(0.02, 0.06),
  oilMass: rises(0, 0.01),
  reciprocatingMass: rises(0.3, 0.9),
  balanceFactor: rises(0.3, 1),
});
solvesBack(discStress, {
  outerRadius: rises(100 * mm, 180 * mm),
  holeRadius: rises(10 * mm, 60 * mm),
  density: goesAs(1, 2700, 7850),
  poissonRatio: rises(0.2, 0.4),
  angularSpeed: goesAs(2, 3000 * rpm, 12_000 * rpm),
});
solvesBack(flangeTorque, {
  bolts: counted(goesAs(1, 4, 10)),
  preload: goesAs(1, 20 * kN, 80 * kN),
  friction: goesAs(1, 0.08, 0.2),
  boltCircleRadius: goesAs(1, 25 * mm, 60 * mm),
});
solvesBack(journalOverlap, {
  mainDiameter: rises(45 * mm, 80 * mm),
  crankpinDiameter: rises(40 * mm, 65 * mm),
  throwRadius: falls(30 * mm, 60 * mm),
});
solvesBack(residualUnbalance, {
  grade: goesAs(1, 2.5 * mm, 40 * mm),
  rotorMass: goesAs(1, 5, 60),
  angularSpeed: goesAs(-1, 3000 * rpm, 12_000 * rpm),
});
solvesBack(throwInertia, {
  crankInertia: rises(0.001, 0.02),
  rods: counted(rises(1, 3)),
  rotatingRodMass: rises(0.2, 0.6),
  reciprocatingMass: rises(0.3, 0.9),
  throwRadius: rises(30 * mm, 60 * mm),
});
solvesBack(inertiaChange, { massChange: goesAs(1, 0.01, 1), radius: goesAs(2, 20 * mm, 120 * mm) });
// A turbulent disc: P goes as rho^0.8 mu^0.2 omega^2.8 R^4.6.
solvesBack(windagePower, {
  discs: goesAs(1, 1, 8),
  radius: goesAs(4.6, 60 * mm, 110 * mm),
  angularSpeed: goesAs(2.8, 3000 * rpm, 12_000 * rpm),
  mistDensity: goesAs(0.8, 1, 20),
  mistViscosity: goesAs(0.2, 1e-5, 1e-3),
});
solvesBack(
  crankingTorque,
  {
    bore: rises(70 * mm, 105 * mm),
    clearanceVolume: falls(40 * cm3, 80 * cm3),
    inletClosing: falls(30 * deg, 90 * deg),
    ambientPressure: goesAs(1, 0.7 * bar, 1.05 * bar),
  },
  (input) => crankingTorque({ crank: centredCrank, ...input }).torque,
  3,
);

property.prop([between(-0.5, 0.5), between(0, 0.12)])("mass put on and taken off again", (mass, radius) => {
  nearly(inertiaChange({ massChange: -mass, radius }), -inertiaChange({ massChange: mass, radius }));
});

property.prop([between(0.1, 1), between(0.1, 1)])(
  "half of what moves up and down makes the bobweight of a right-angled pair: each piston alike along both axes",
  (rotatingRodMass, reciprocatingMass) => {
    const one = { rods: 2, rotatingRodMass, shellMass: 0, oilMass: 0, reciprocatingMass };
    // Sum over both banks of m cos^2 along any direction is m, half of the two pistons together.
    nearly(bobweight({ ...one, balanceFactor: 0.5 }), 2 * rotatingRodMass + reciprocatingMass);
  },
);

property.prop([between(60 * mm, 150 * mm), between(500, 1500)])(
  "a disc with a pinhole is stressed twice as much as the middle of a whole one",
  (outerRadius, angularSpeed) => {
    const found = discStress({
      outerRadius,
      holeRadius: 1e-9,
      density: 7850,
      poissonRatio: 0.3,
      angularSpeed,
    });
    // Whole disc at its middle: (3 + nu)/8 rho omega^2 R^2.
    nearly(found, 2 * (3.3 / 8) * 7850 * (angularSpeed * outerRadius) ** 2);
  },
);
