import { cellNumber } from "../read/cellNumber.ts";
import type { TableRow } from "../read/FieldValue.ts";

/** Below this share of full length the directions of the banks cancel: the cylinders are opposed. */
const OPPOSED = 1e-6;

/**
 * Directions in which what holds the main bearings comes off, in the frame of the loads of the main bearings.
 * @param split word of `mainCap.split`
 * @param banks directions in which the cylinders point [rad]
 * @returns one for caps that are drawn away from the cylinders; two where either may be the one that is pulled
 */
function openingsOf(split: string, banks: readonly number[]): readonly number[] {
  const first = banks[0]!;
  // Both halves of a split case hold bearings: each is pulled away from the other.
  if (split === "case") return [first, first + Math.PI];
  const x = banks.reduce((sum, bank) => sum + Math.sin(bank), 0) / banks.length;
  const y = banks.reduce((sum, bank) => sum + Math.cos(bank), 0) / banks.length;
  const opposed = Math.hypot(x, y) < OPPOSED;
  // Which side of opposed cylinders the caps lie on is not asked: the worse of both is taken.
  return opposed ? [first + Math.PI / 2, first - Math.PI / 2] : [Math.atan2(-x, -y)];
}

/**
 * Directions in which caps or case halves come off.
 * @param split word of `mainCap.split`
 * @param bankAngle [rad]
 * @param throws where each cylinder points, or undefined where no throws are entered
 */
export function capOpenings(
  split: string,
  bankAngle: number,
  throws: readonly TableRow[] | undefined,
): readonly number[] {
  const banks = throws?.map((row) => cellNumber(row, "bank")) ?? [0, bankAngle];
  return openingsOf(split, banks);
}
