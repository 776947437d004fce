import { positive, requireAll } from "../check/requireAll.ts";
import { clearanceVolumeForRatio } from "./clearanceVolume.ts";

/**
 * Depth to mill off a head face for a wanted compression ratio.
 * @param input.sweptVolume of one cylinder [m3], > 0
 * @param input.clearanceVolume now [m3], > 0
 * @param input.compressionRatio wanted [-], > 1
 * @param input.faceArea area of the chamber opening in the head face [m2], > 0
 * @returns depth [m], - when the chamber must grow; holds while the chamber walls stand square to the face
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function millingForRatio(input: {
  sweptVolume: number;
  clearanceVolume: number;
  compressionRatio: number;
  faceArea: number;
}): number {
  const { clearanceVolume, faceArea } = input;
  requireAll(positive, { clearanceVolume, faceArea });
  return (clearanceVolume - clearanceVolumeForRatio(input)) / faceArea;
}
