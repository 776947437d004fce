import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Reserve of a preloaded bolt against fatigue by Goodman's line, the preload held constant while the load grows:
 * S_e (R_m - sigma_i) / (sigma_a (R_m + S_e)).
 * @param input.preloadStress sigma_i [Pa], >= 0
 * @param input.amplitude stress amplitude sigma_a [Pa], > 0: half of what the load adds
 * @param input.enduranceStrength S_e of the rolled or cut thread, notch included [Pa], > 0
 * @param input.tensileStrength R_m [Pa], > 0
 * @returns reserve [-]; at 1 it fails in the long run; negative when the preload alone passes the tensile strength
 * @throws RangeError when a value is out of range
 *
 * Source: Shigley's Mechanical Engineering Design, fatigue loading of tension joints.
 */
export function boltFatigueReserve(input: {
  preloadStress: number;
  amplitude: number;
  enduranceStrength: number;
  tensileStrength: number;
}): number {
  const { preloadStress, amplitude, enduranceStrength, tensileStrength } = input;
  requireAll(notNegative, { preloadStress });
  requireAll(positive, { amplitude, enduranceStrength, tensileStrength });
  return (
    (enduranceStrength * (tensileStrength - preloadStress)) /
    (amplitude * (tensileStrength + enduranceStrength))
  );
}
