import { counted, falls, goesAs, notSolved, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { bar, deg, GPa, kN, MPa, mm, offsetCrank, rpm } from "../check/support.test-support.ts";
import { beamCompression, beamTension } from "./beamStress.ts";
import { bigEndJointLoad, jointLoadPerBolt } from "./bigEndJointLoad.ts";
import { crankForces } from "./crankForces.ts";
import { crankpinLoad, crankTorque } from "./crankpinLoad.ts";
import { crankpinLoadCycle, sizeOverCycle } from "./crankpinLoadCycle.ts";
import { curvedBeamStress } from "./curvedBeamStress.ts";
import { eyeBendingStress } from "./eyeBendingStress.ts";
import { eyeStress } from "./eyeStress.ts";
import { fatigueReserve } from "./fatigueReserve.ts";
import { gasForce } from "./gasForce.ts";
import { heldRing } from "./heldRing.ts";
import { inertiaForceAtTopDeadCentre } from "./inertiaForceAtTopDeadCentre.ts";
import { reciprocatingMass } from "./reciprocatingMass.ts";
import { jointReserve, residualClamp } from "./residualClamp.ts";
import { rodAxialForce } from "./rodAxialForce.ts";
import { columnBucklingLoad, rodBucklingLoad } from "./rodBucklingLoad.ts";
import { sideThrust } from "./sideThrust.ts";
import { soderbergReserve } from "./soderbergReserve.ts";
import { strengthAt } from "./strengthAt.ts";
import { twoMassRod } from "./twoMassRod.ts";

const throwRadius = [40 * mm, 52 * mm] as const;
const rodLength = [135 * mm, 160 * mm] as const;
const speed = [3000 * rpm, 9000 * rpm] as const;
const crankOf = (input: { throwRadius: number; rodLength: number }) => ({ ...offsetCrank, ...input });

solvesBack(beamTension, {
  mass: goesAs(1, 0.4, 0.9),
  acceleration: goesAs(1, 1e4, 6e4),
  area: goesAs(-1, 1e-4, 4e-4),
});
// With more gas than inertia, as at peak pressure.
solvesBack(beamCompression, {
  gasForce: rises(60 * kN, 110 * kN),
  mass: falls(0.4, 0.9),
  acceleration: falls(1e4, 5e4),
  area: goesAs(-1, 1e-4, 4e-4),
});
solvesBack(
  bigEndJointLoad,
  {
    throwRadius: rises(...throwRadius),
    rodLength: falls(...rodLength),
    reciprocatingMass: rises(0.4, 0.9),
    rotatingMass: rises(0.35, 0.6),
    capMass: falls(0.1, 0.3),
    angularSpeed: goesAs(2, ...speed),
  },
  ({ throwRadius: r, rodLength: l, ...masses }) =>
    bigEndJointLoad({ crank: crankOf({ throwRadius: r, rodLength: l }), ...masses }),
);
solvesBack(jointLoadPerBolt, {
  jointLoad: goesAs(1, 10 * kN, 60 * kN),
  bolts: counted(goesAs(-1, 2, 4)),
  pryingFactor: goesAs(1, 1, 1.5),
});
solvesBack(
  inertiaForceAtTopDeadCentre,
  {
    throwRadius: rises(...throwRadius),
    rodLength: falls(...rodLength),
    reciprocatingMass: goesAs(1, 0.4, 0.9),
    angularSpeed: goesAs(2, ...speed),
  },
  ({ throwRadius: r, rodLength: l, ...rest }) =>
    inertiaForceAtTopDeadCentre({ crank: crankOf({ throwRadius: r, rodLength: l }), ...rest }),
);
solvesBack(fatigueReserve, {
  allowableAmplitude: goesAs(1, 200 * MPa, 450 * MPa),
  compressiveStress: falls(50 * MPa, 400 * MPa),
  tensileStress: falls(50 * MPa, 300 * MPa),
});
solvesBack(gasForce, {
  cylinderPressure: rises(20 * bar, 150 * bar),
  casePressure: falls(0.7 * bar, 1.2 * bar),
  bore: goesAs(2, 70 * mm, 110 * mm),
});
solvesBack(reciprocatingMass, {
  piston: rises(0.25, 0.6),
  pin: rises(0.06, 0.16),
  rings: rises(0.02, 0.06),
  retainers: rises(0.001, 0.006),
  rodSmallEnd: rises(0.1, 0.25),
});
solvesBack(jointReserve, {
  preload: goesAs(1, 20 * kN, 60 * kN),
  bolts: counted(goesAs(1, 2, 4)),
  jointLoad: goesAs(-1, 10 * kN, 60 * kN),
});
solvesBack(residualClamp, {
  preload: rises(20 * kN, 60 * kN),
  bolts: counted(rises(2, 4)),
  loadFactor: rises(0.05, 0.4),
  jointLoad: falls(10 * kN, 60 * kN),
  pryingFactor: falls(1, 1.5),
});
solvesBack(
  rodAxialForce,
  {
    gasForce: rises(-5 * kN, 60 * kN),
    reciprocatingMass: falls(0.4, 0.9),
    angularSpeed: falls(...speed),
    angle: notSolved(-20 * deg, 20 * deg, "inertia has its extreme within the range"),
    throwRadius: notSolved(...throwRadius, "it strengthens inertia and steepens the rod at once"),
    rodLength: notSolved(...rodLength, "it weakens inertia and straightens the rod at once"),
  },
  ({ throwRadius: r, rodLength: l, ...rest }) =>
    rodAxialForce({ crank: crankOf({ throwRadius: r, rodLength: l }), ...rest }),
);
solvesBack(sideThrust, { rodForce: goesAs(1, 5 * kN, 60 * kN), rodAngle: rises(2 * deg, 18 * deg) });
solvesBack(eyeStress, {
  force: goesAs(1, 5 * kN, 40 * kN),
  outerDiameter: falls(34 * mm, 40 * mm),
  boreDiameter: rises(20 * mm, 30 * mm),
  width: goesAs(-1, 18 * mm, 28 * mm),
});
const steel = { elasticModulus: rises(180 * GPa, 215 * GPa), yieldStrength: rises(500 * MPa, 900 * MPa) };
// Stocky, as rods are.
solvesBack(
  columnBucklingLoad,
  {
    ...steel,
    effectiveLength: falls(100 * mm, 160 * mm),
    area: rises(1.5e-4, 3e-4),
    secondMoment: rises(3e-9, 9e-9),
  },
  (column) => columnBucklingLoad(column).load,
);
// Slender: Euler's load knows neither area nor strength.
solvesBack(
  columnBucklingLoad,
  {
    elasticModulus: goesAs(1, 180 * GPa, 215 * GPa),
    effectiveLength: goesAs(-2, 200 * mm, 300 * mm),
    secondMoment: goesAs(1, 0.8e-10, 1.6e-10),
    area: notSolved(5e-5, 7e-5, "a slender column's load does not depend on it"),
    yieldStrength: notSolved(500 * MPa, 900 * MPa, "a slender column's load does not depend on it"),
  },
  (column) => columnBucklingLoad(column).load,
);
// A beam so wide that it always gives in the plane of motion.
solvesBack(
  rodBucklingLoad,
  {
    ...steel,
    rodLength: falls(100 * mm, 160 * mm),
    area: rises(1.5e-4, 3e-4),
    secondMomentInPlane: rises(3e-9, 5e-9),
    secondMomentSideways: notSolved(2e-9, 5e-9, "the stronger of the two planes does not count"),
  },
  (rod) => rodBucklingLoad(rod).load,
);
solvesBack(
  twoMassRod,
  {
    mass: goesAs(1, 0.4, 0.9),
    rodLength: goesAs(-1, ...rodLength),
    centreOfGravityFromBigEnd: goesAs(1, 30 * mm, 55 * mm),
  },
  (rod) => twoMassRod(rod).reciprocating,
);
const journey = { throwRadius: rises(...throwRadius), rodLength: falls(...rodLength) };
solvesBack(
  crankpinLoad,
  {
    ...journey,
    rodForce: falls(20 * kN, 60 * kN),
    rotatingRodMass: rises(0.3, 0.6),
    angularSpeed: rises(...speed),
    angle: notSolved(20 * deg, 40 * deg, "rod and centrifugal force turn against one another"),
  },
  ({ throwRadius: r, rodLength: l, ...rest }) =>
    crankpinLoad({ crank: crankOf({ throwRadius: r, rodLength: l }), ...rest }).y,
);
solvesBack(
  crankTorque,
  { ...journey, rodForce: goesAs(1, 20 * kN, 60 * kN), angle: rises(15 * deg, 55 * deg) },
  ({ throwRadius: r, rodLength: l, ...rest }) =>
    crankTorque({ crank: crankOf({ throwRadius: r, rodLength: l }), ...rest }),
);
// Gas against inertia at 20 degrees after top dead centre, with more gas than inertia.
const running = {
  pressure: rises(60 * bar, 120 * bar),
  casePressure: falls(0.7 * bar, 1.2 * bar),
  reciprocatingMass: falls(0.4, 0.9),
  angularSpeed: falls(2000 * rpm, 5000 * rpm),
  bore: rises(80 * mm, 100 * mm),
};
type Running = Readonly<Record<keyof typeof running, number>>;
const cylinderOf = ({ pressure, ...rest }: Running) => ({
  ...rest,
  crank: offsetCrank,
  rotatingRodMass: 0.4,
  pressureAt: () => pressure,
});
solvesBack(crankForces, running, (v) => crankForces(cylinderOf(v))(20 * deg).torque);
solvesBack(crankpinLoadCycle, running, (v) => -crankpinLoadCycle(cylinderOf(v)).y[0]!, 4);
// Inertia alone, whose size over the cycle goes as the square of the speed.
solvesBack(
  sizeOverCycle,
  { angularSpeed: goesAs(2, 2000 * rpm, 9000 * rpm), reciprocatingMass: rises(0.4, 0.9) },
  (v) =>
    sizeOverCycle(crankpinLoadCycle(cylinderOf({ ...v, pressure: bar, casePressure: bar, bore: 86 * mm })))
      .mean,
  4,
);
const section = {
  innerRadius: [22 * mm, 30 * mm],
  depth: [6 * mm, 12 * mm],
  width: [16 * mm, 26 * mm],
} as const;
solvesBack(
  curvedBeamStress,
  {
    innerRadius: falls(...section.innerRadius),
    depth: falls(...section.depth),
    width: goesAs(-1, ...section.width),
    tension: rises(2 * kN, 20 * kN),
    moment: rises(20, 120),
  },
  ({ tension, moment, ...sizes }) => curvedBeamStress(sizes, { tension, moment }).inner,
);
solvesBack(
  eyeBendingStress,
  {
    force: goesAs(1, 10 * kN, 60 * kN),
    innerRadius: rises(...section.innerRadius),
    depth: falls(...section.depth),
    width: goesAs(-1, ...section.width),
    heldAngle: notSolved(100 * deg, 170 * deg, "the stress of the middle hardly goes with it, and turns"),
  },
  ({ force, heldAngle, ...sizes }) =>
    eyeBendingStress({ force, section: sizes, pressure: "cosine", heldAngle, lastAngle: 0 }).outer,
);
solvesBack(
  heldRing,
  {
    force: goesAs(1, 10 * kN, 60 * kN),
    radius: goesAs(1, 22 * mm, 40 * mm),
    heldAngle: notSolved(100 * deg, 170 * deg, "the moment at the middle hardly goes with it, and turns"),
  },
  ({ heldAngle, ...ring }) => -heldRing({ ...ring, pressure: "cosine", heldAngle })(0).moment,
);
solvesBack(soderbergReserve, {
  amplitude: falls(50 * MPa, 200 * MPa),
  mean: falls(20 * MPa, 300 * MPa),
  fatigueStrength: rises(150 * MPa, 500 * MPa),
  yieldStrength: rises(500 * MPa, 1200 * MPa),
});
solvesBack(
  strengthAt,
  { cold: rises(380 * MPa, 500 * MPa), hot: rises(80 * MPa, 200 * MPa), temperature: falls(330, 520) },
  ({ cold, hot, temperature }) =>
    strengthAt({ temperatures: [300, 550], strengths: [cold, hot] }, temperature),
);
