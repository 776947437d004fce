import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Static compression ratio, (V_d + V_c) / V_c.
 * @param input.sweptVolume swept volume of one cylinder [m3], > 0
 * @param input.clearanceVolume clearance volume of the same cylinder [m3], > 0
 * @returns compression ratio [-], > 1
 * @throws RangeError when a volume is not above zero
 *
 * Source: definition.
 */
export function compressionRatio(input: { sweptVolume: number; clearanceVolume: number }): number {
  const { sweptVolume, clearanceVolume } = input;
  requireAll(positive, { sweptVolume, clearanceVolume });
  return (sweptVolume + clearanceVolume) / clearanceVolume;
}
