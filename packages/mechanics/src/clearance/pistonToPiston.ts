import { positive, requireAll } from "../check/requireAll.ts";
import { bankTilts } from "../kinematics/bankTilts.ts";
import { pinHeight } from "../kinematics/pinHeight.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { leastOnInterval } from "../outline/leastOnInterval.ts";

/** Two degrees of crank: far finer than any lobe of the slider-crank's motion. */
const cells = 180;

/**
 * Least distance between the two pistons of one crankpin across a V. Each piston's inner lower corner stands
 * (y - h_s) sin(gamma/2) - (D/2) cos(gamma/2) from the middle plane of the block; the sum for both is never
 * more than the way between them, and is that way when both stand equally high and the cylinders are not
 * staggered along the crank.
 * @param input.crank the mechanism of either bank
 * @param input.bankAngle between the banks [rad], above 0 to pi
 * @param input.skirtDepth lower edge of the skirt below the pin axis [m], > 0
 * @param input.skirtDiameter outside diameter at that edge [m], > 0
 * @returns clearance [m], - when they may meet, and the crank angle [rad] from the top dead centre of the bank
 * that the crankpin reaches first, 0 to 2 pi
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function pistonToPiston(input: {
  crank: SliderCrank;
  bankAngle: number;
  skirtDepth: number;
  skirtDiameter: number;
}): { clearance: number; angle: number } {
  const { crank, bankAngle, skirtDepth, skirtDiameter } = input;
  requireAll({ above: 0 }, { bankAngle });
  requireAll(positive, { skirtDepth, skirtDiameter });
  const tilts = bankTilts(bankAngle);
  const across = (skirtDiameter / 2) * Math.cos(bankAngle / 2);
  const wayAt = (angle: number): number => {
    // The bank that is reached first leans back by half the bank angle.
    const pin = angle - bankAngle / 2;
    return tilts.reduce((sum, tilt) => {
      const height = pinHeight(crank, pin - tilt) - skirtDepth;
      return sum + height * Math.sin(bankAngle / 2) - across;
    }, 0);
  };
  const { at, value } = leastOnInterval(wayAt, 0, 2 * Math.PI, cells);
  return { clearance: value, angle: at };
}
