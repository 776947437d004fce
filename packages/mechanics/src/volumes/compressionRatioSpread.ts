import { notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";

/**
 * Difference of compression ratio between the cylinders with the smallest and the largest chamber,
 * V_d / (V_c - d/2) - V_d / (V_c + d/2).
 * @param input.sweptVolume of one cylinder [m3], > 0
 * @param input.clearanceVolume mean of the cylinders [m3], > 0
 * @param input.chamberSpread largest less smallest chamber [m3], 0 up to twice the clearance volume
 * @returns difference [-]
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function compressionRatioSpread(input: {
  sweptVolume: number;
  clearanceVolume: number;
  chamberSpread: number;
}): number {
  const { sweptVolume, clearanceVolume, chamberSpread } = input;
  requireAll(positive, { sweptVolume, clearanceVolume });
  requireAll(notNegative, { chamberSpread });
  const half = chamberSpread / 2;
  requireThat(half < clearanceVolume, "chamberSpread", chamberSpread, "below twice the clearance volume");
  return sweptVolume / (clearanceVolume - half) - sweptVolume / (clearanceVolume + half);
}
