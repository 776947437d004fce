import {
  bigEndJointLoadOver,
  crankForces,
  gasForce as forceOf,
  jointLoadPerBolt,
  pistonAccelerationOver,
  pressureAt,
} from "@trialfit/mechanics";
import { type PressureTraceNumbers, pressureTrace } from "../../derive/pressureTrace.ts";
import { greatestSideThrust } from "../../derive/quantities/pistons/greatestSideThrust.ts";
import { bigEndJointLoad } from "../../derive/quantities/rods/bigEndJointLoad.ts";
import { greatestRodCompression } from "../../derive/quantities/rods/greatestRodCompression.ts";
import { inertiaForce as inertiaForceAtTop } from "../../derive/quantities/rods/inertiaForce.ts";
import { rodBoltLoad as boltShare } from "../../derive/quantities/rods/rodBoltLoad.ts";
import { peakPressureAngle } from "../../derive/quantities/targets/peakPressureAngle.ts";
import { type CycleNumbers, runningCylinder } from "../../derive/runningCylinder.ts";
import { asksLike, type Taken, type TraceKind } from "../TraceKind.ts";
import { crankOf } from "./motion.ts";

const kilonewtons = { unit: "kN", decimals: 1, from: "firing" } as const;
const pressureOver = ({ numbers }: Taken) => {
  const trace = pressureTrace(numbers as PressureTraceNumbers);
  return (angle: number) => pressureAt(trace, angle);
};
const forcesOver = ({ numbers }: Taken) => crankForces(runningCylinder(numbers as CycleNumbers));

export const cylinderPressure: TraceKind = {
  ...asksLike(peakPressureAngle),
  id: "cylinderPressure",
  name: "Cylinder pressure",
  meaning:
    "Absolute pressure in the cylinder at the power speed under full load, worked from the burning entered.",
  unit: "bar",
  decimals: 1,
  turns: 2,
  from: "firing",
  over: pressureOver,
  extremes: [{ take: "greatest", of: "targets.peakCylinderPressure" }],
};

export const gasForce: TraceKind = {
  ...asksLike(peakPressureAngle),
  ...kilonewtons,
  id: "gasForce",
  name: "Gas force",
  meaning:
    "Force of the gas on the piston, positive towards the crankshaft; the small pressure in the crankcase is left out.",
  turns: 2,
  over: (taken) => {
    const pressure = pressureOver(taken);
    const bore = taken.numbers.B!;
    return (angle) => forceOf({ cylinderPressure: pressure(angle), casePressure: 0, bore });
  },
  extremes: [{ take: "greatest", of: "gasForce" }],
};

export const inertiaForce: TraceKind = {
  ...asksLike(inertiaForceAtTop),
  ...kilonewtons,
  id: "inertiaForce",
  name: "Inertia force",
  meaning:
    "Inertia of what goes up and down, along the cylinder, at overspeed; positive away from the crankshaft, where it pulls on the rod.",
  turns: 1,
  over: (taken) => {
    const { m_rec, n_o } = taken.numbers;
    const acceleration = pistonAccelerationOver(crankOf(taken), n_o!);
    return (angle) => -m_rec! * acceleration(angle);
  },
  extremes: [{ take: "greatest", of: "inertiaForce" }],
};

export const rodForce: TraceKind = {
  ...asksLike(greatestRodCompression),
  ...kilonewtons,
  id: "rodForce",
  name: "Force in the rod",
  meaning:
    "Gas and inertia along the rod at the power speed under full load; positive presses it together, negative pulls it.",
  turns: 2,
  over: (taken) => {
    const forces = forcesOver(taken);
    return (angle) => forces(angle).rod;
  },
  extremes: [
    { take: "greatest", of: "greatestRodCompression" },
    { take: "pull", of: "greatestRodTension" },
  ],
};

export const sideForce: TraceKind = {
  ...asksLike(greatestSideThrust),
  ...kilonewtons,
  id: "sideForce",
  name: "Side force of the piston",
  meaning:
    "Force with which the piston presses on its cylinder at the power speed under full load; positive on the thrust side.",
  decimals: 2,
  turns: 2,
  over: (taken) => {
    const forces = forcesOver(taken);
    return (angle) => forces(angle).side;
  },
  extremes: [{ take: "greatest", of: "greatestSideThrust" }],
};

export const rodBoltLoad: TraceKind = {
  ...asksLike(bigEndJointLoad),
  ...kilonewtons,
  inputs: { ...bigEndJointLoad.inputs, n_b: boltShare.inputs.n_b! },
  id: "rodBoltLoad",
  name: "Load on one rod bolt",
  meaning:
    "Share of one bolt in what opens the joint of the big end at overspeed, without gas; positive opens it. Bending of the cap adds to it and is not counted.",
  turns: 1,
  over: (taken) => {
    const { m_rec, m_b, m_cap, n_o, n_b } = taken.numbers;
    const load = bigEndJointLoadOver({
      crank: crankOf(taken),
      reciprocatingMass: m_rec!,
      rotatingMass: m_b!,
      capMass: m_cap!,
      angularSpeed: n_o!,
    });
    const share = jointLoadPerBolt({ jointLoad: 1, bolts: n_b!, pryingFactor: 1 });
    return (angle) => share * load(angle);
  },
  extremes: [{ take: "greatest", of: "rodBoltLoad" }],
};
