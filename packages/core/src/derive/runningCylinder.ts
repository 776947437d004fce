import { crankpinLoadCycle, pressureAt, type RunningCylinder } from "@trialfit/mechanics";
import {
  pressureTrace,
  pressureTraceExample,
  pressureTraceInputs,
  pressureTraceMethod,
} from "./pressureTrace.ts";
import { rememberNumbers } from "./rememberNumbers.ts";

/** What the forces of one cylinder over its cycle need: the gas, the masses and the pressure under the piston. */
export const cycleForceInputs = {
  ...pressureTraceInputs,
  m_rec: "reciprocatingMass",
  m_b: "connectingRod.bigEndMass",
  p_a: "conditions.ambientPressure",
} as const;

export const cycleForceExample = {
  ...pressureTraceExample,
  m_rec: "634 g",
  m_b: "405 g",
  p_a: "1 bar",
} as const;

/** How the forces come about, for the methods of the quantities that read them. */
export const cycleForceMethod = `${pressureTraceMethod} To the gas force comes the inertia of piston and rod at the power speed.`;

export type CycleNumbers = Readonly<Record<keyof typeof cycleForceInputs, number>>;

/** One cylinder at the power speed, as mechanics takes it. */
export function runningCylinder(numbers: CycleNumbers): RunningCylinder {
  const trace = pressureTrace(numbers);
  const { r, l, e, B, n_P, m_rec, m_b, p_a } = numbers;
  return {
    crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
    bore: B,
    pressureAt: (angle) => pressureAt(trace, angle),
    casePressure: p_a,
    reciprocatingMass: m_rec,
    rotatingRodMass: m_b,
    angularSpeed: n_P,
  };
}

/** Cycles kept, about 9 kB each: those of all quantities of one build, for when the oil or a bearing is changed. */
const MOST_KEPT = 768;

/** Load of one rod on its crankpin over the cycle; the same numbers are answered from memory. Not to be changed. */
export const crankpinCycle = rememberNumbers(
  Object.keys(cycleForceInputs) as readonly (keyof CycleNumbers)[],
  MOST_KEPT,
  (numbers: CycleNumbers) => crankpinLoadCycle(runningCylinder(numbers)),
);
