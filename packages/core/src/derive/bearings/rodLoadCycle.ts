import { type CrankpinLoadCycle, crankpinLoadCycle, pressureAt } from "@trialfit/mechanics";
import type { cycleForceInputs } from "../cycleForces.ts";
import { pressureTrace } from "../pressureTrace.ts";

export type CycleNumbers = Readonly<Record<keyof typeof cycleForceInputs, number>>;

/** Load of one rod on its crankpin over the cycle, at the power speed. */
export function rodLoadCycle(numbers: CycleNumbers): CrankpinLoadCycle {
  const trace = pressureTrace(numbers);
  const { r, l, e, B, n_P, m_rec, m_b, p_a } = numbers;
  return crankpinLoadCycle({
    crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
    bore: B,
    pressureAt: (angle) => pressureAt(trace, angle),
    casePressure: p_a,
    reciprocatingMass: m_rec,
    rotatingRodMass: m_b,
    angularSpeed: n_P,
  });
}
