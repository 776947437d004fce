import { notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";

/**
 * Fatigue reserve of a part whose stress swings about a mean, on the line from fatigue strength to yield strength
 * (Soderberg): 1 / n = sigma_a / S_e + sigma_m / S_y. It guards against yielding as well and is on the safe side.
 * @param input.amplitude half of the swing [Pa], >= 0
 * @param input.mean [Pa], >= 0, + tension
 * @param input.fatigueStrength amplitude that the part stands about a mean of 0 [Pa], > 0
 * @param input.yieldStrength [Pa], > 0
 * @returns reserve [-]; at 1 the part just stands it
 * @throws RangeError when a value is out of range or there is no stress at all
 *
 * Source: Shigley's Mechanical Engineering Design, fluctuating stresses.
 */
export function soderbergReserve(input: {
  amplitude: number;
  mean: number;
  fatigueStrength: number;
  yieldStrength: number;
}): number {
  const { amplitude, mean, fatigueStrength, yieldStrength } = input;
  requireAll(notNegative, { amplitude, mean });
  requireAll(positive, { fatigueStrength, yieldStrength });
  const use = amplitude / fatigueStrength + mean / yieldStrength;
  requireThat(use > 0, "amplitude + mean", use, "a sum above 0");
  return 1 / use;
}
