import { finite, notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";

/**
 * How far a rocker's contact wanders across the valve tip from shut to full lift. The end of the arm moves on a circle
 * about the pivot; its distance from the pivot square to the stem is sqrt(a^2 - h^2) at a height h above the pivot, and
 * is greatest where the arm is level.
 * @param input.armLength a, pivot to contact [m], > 0
 * @param input.lift of the valve [m], >= 0
 * @param input.midLiftAngle of the arm against a line square to the stem at half lift [rad], + with its end above the
 * pivot; 0 for the least sweep
 * @returns sweep [m], >= 0
 * @throws RangeError when a value is out of range or the arm is too short to reach shut and full lift
 *
 * Source: plane geometry.
 */
export function rockerTipSweep(input: { armLength: number; lift: number; midLiftAngle: number }): number {
  const { armLength, lift, midLiftAngle } = input;
  requireAll(positive, { armLength });
  requireAll(notNegative, { lift });
  requireAll(finite, { midLiftAngle });
  const middle = armLength * Math.sin(midLiftAngle);
  const [low, high] = [middle - lift / 2, middle + lift / 2];
  const farthest = Math.max(Math.abs(low), Math.abs(high));
  requireThat(farthest < armLength, "armLength", armLength, `above ${farthest}, to reach shut and full lift`);
  const reach = (height: number) => Math.sqrt(armLength ** 2 - height ** 2);
  const greatest = low <= 0 && high >= 0 ? armLength : Math.max(reach(low), reach(high));
  return greatest - Math.min(reach(low), reach(high));
}
