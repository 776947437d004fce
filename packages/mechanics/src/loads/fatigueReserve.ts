import { notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";

/**
 * Fatigue reserve of the beam: allowable stress amplitude over the amplitude of the cycle between compression
 * at firing and tension at gas exchange. The mean stress, compressive in most rods, is left out; with a
 * tensile mean the allowable amplitude must be lowered first (Goodman).
 * @param input.allowableAmplitude of material and surface [Pa], > 0
 * @param input.compressiveStress [Pa], + compression, >= 0
 * @param input.tensileStress [Pa], + tension, >= 0
 * @returns reserve [-]
 * @throws RangeError when a value is out of range or both stresses are zero
 *
 * Source: Shigley's Mechanical Engineering Design.
 */
export function fatigueReserve(input: {
  allowableAmplitude: number;
  compressiveStress: number;
  tensileStress: number;
}): number {
  const { allowableAmplitude, compressiveStress, tensileStress } = input;
  requireAll(positive, { allowableAmplitude });
  requireAll(notNegative, { compressiveStress, tensileStress });
  const amplitude = (compressiveStress + tensileStress) / 2;
  requireThat(amplitude > 0, "compressiveStress + tensileStress", amplitude, "a sum above 0");
  return allowableAmplitude / amplitude;
}
