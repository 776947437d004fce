import { notNegative, positive, requireAll } from "../check/requireAll.ts";
import { bankTilts } from "../kinematics/bankTilts.ts";
import { pinHeight } from "../kinematics/pinHeight.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { leastOnInterval } from "../outline/leastOnInterval.ts";

/** Two degrees of crank: far finer than any lobe of the slider-crank's motion. */
const cells = 180;

/** Parts of the stretch along the crank over which the nearest points of two round skirts are sought. */
const stretchParts = 8;

/** Two round skirts in banks that lean apart. */
interface Skirts {
  readonly radius: number;
  /** cosine of half the bank angle */
  readonly lean: number;
  readonly stagger: number;
}

/**
 * Way between the lower rims of two skirts whose innermost points stand so far apart across the middle plane. Each
 * rim recedes by R - sqrt(R^2 - u^2) at u along the crank from there, while the stagger left grows smaller.
 */
function wayWithStagger(apart: number, { radius, lean, stagger }: Skirts): number {
  const most = Math.min(stagger / 2, radius);
  const across = (u: number): number => apart + 2 * (radius - Math.sqrt(radius * radius - u * u)) * lean;
  if (across(most) <= 0) return across(most);
  const way = (u: number): number => Math.hypot(Math.max(0, across(u)), stagger - 2 * u);
  return leastOnInterval(way, 0, most, stretchParts).value;
}

/**
 * Least distance between the two pistons of one crankpin across a V. Each piston's innermost lower point stands
 * (y - h_s) sin(gamma/2) - (D/2) cos(gamma/2) from the middle plane of the block, y its pin height. The sum for
 * both, with what a stagger along the crank adds, is never more than the way between them, and is that way when
 * both stand equally high.
 * @param input.crank the mechanism of either bank
 * @param input.bankAngle between the banks [rad], above 0 to pi
 * @param input.bankStagger along the crank between the two cylinder axes [m], >= 0
 * @param input.skirtDepth lower edge of the skirt below the pin axis [m], > 0
 * @param input.skirtDiameter outside diameter at that edge, round [m], > 0
 * @returns clearance [m], - when they may meet, and the crank angle [rad] from the top dead centre of the bank
 * that the crankpin reaches first, 0 to 2 pi
 * @throws RangeError when a value is out of range
 *
 * Source: plane and solid geometry.
 */
export function pistonToPiston(input: {
  crank: SliderCrank;
  bankAngle: number;
  bankStagger: number;
  skirtDepth: number;
  skirtDiameter: number;
}): { clearance: number; angle: number } {
  const { crank, bankAngle, bankStagger, skirtDepth, skirtDiameter } = input;
  requireAll({ above: 0 }, { bankAngle });
  requireAll(notNegative, { bankStagger });
  requireAll(positive, { skirtDepth, skirtDiameter });
  const tilts = bankTilts(bankAngle);
  const [radius, lean] = [skirtDiameter / 2, Math.cos(bankAngle / 2)];
  const apartAt = (angle: number): number => {
    // The bank that is reached first leans back by half the bank angle.
    const pin = angle - bankAngle / 2;
    return tilts.reduce((sum, tilt) => {
      const height = pinHeight(crank, pin - tilt) - skirtDepth;
      return sum + height * Math.sin(bankAngle / 2) - radius * lean;
    }, 0);
  };
  const { at, value } = leastOnInterval(apartAt, 0, 2 * Math.PI, cells);
  return { clearance: wayWithStagger(value, { radius, lean, stagger: bankStagger }), angle: at };
}
