import { greatestOverTurn } from "../kinematics/greatestOverTurn.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { type CylinderPhase, sweptTogether } from "./engineVolume.ts";

/**
 * Greatest less least volume of the crankcase over a turn: what all pistons together take from it on their way
 * down and give back. The case breathes as much as that, or its pressure pulses.
 * @param input.crank the mechanism, the same for all cylinders
 * @param input.bore finished bore [m], > 0
 * @param input.cylinders each cylinder's crankpin angle and bank angle [rad], both in the sense of rotation; at
 * least one
 * @returns volume [m3]
 * @throws RangeError when a value is out of range or there is no cylinder
 *
 * Source: plane geometry. A case divided between the throws breathes more than the sum says.
 */
export function crankcaseVolumeSwing(input: {
  crank: SliderCrank;
  bore: number;
  cylinders: readonly CylinderPhase[];
}): number {
  const sum = sweptTogether(input);
  const most = greatestOverTurn(sum).value;
  const least = -greatestOverTurn((angle) => -sum(angle)).value;
  return most - least;
}
