import { type CrankForces, crankForces, pressureAt } from "@trialfit/mechanics";
import {
  type PressureTraceNumbers,
  pressureTrace,
  pressureTraceExample,
  pressureTraceInputs,
  pressureTraceMethod,
} from "./pressureTrace.ts";

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

/** Forces of one cylinder by crank angle at the power speed. */
export function cycleForces(
  numbers: PressureTraceNumbers & { readonly m_rec: number; readonly m_b: number; readonly p_a: number },
): (angle: number) => CrankForces {
  const trace = pressureTrace(numbers);
  const { r, l, e, B, n_P, m_rec, m_b, p_a } = numbers;
  return crankForces({
    crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
    bore: B,
    pressureAt: (angle) => pressureAt(trace, angle),
    casePressure: p_a,
    reciprocatingMass: m_rec,
    rotatingRodMass: m_b,
    angularSpeed: n_P,
  });
}
