import { positive, requireAll } from "../check/requireAll.ts";
import { greatestBetween } from "../kinematics/greatestOverTurn.ts";
import { pistonVelocityOver } from "../kinematics/pistonVelocity.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { boreArea } from "../volumes/boreArea.ts";
import { cylinderVolume } from "../volumes/cylinderVolumeAt.ts";
import { trappedVolume } from "../volumes/trappedVolume.ts";

/** Polytropic exponent of slow compression with heat lost to the walls [-]. Source: common practice. */
const EXPONENT = 1.25;
/** Cells of the stroke: the torque has one top, tens of degrees wide. */
const CELLS = 45;

/**
 * Greatest torque that one cylinder takes on its compression stroke while it is turned over slowly:
 * (p - p_a) A dy/dtheta with p = p_a (V_IVC / V)^1.25. Friction comes on top, 20 to 40 % (common practice).
 * @param input.crank the mechanism
 * @param input.bore [m], > 0
 * @param input.clearanceVolume [m3], > 0
 * @param input.inletClosing crank angle after bottom dead centre [rad], 0 up to pi
 * @param input.ambientPressure p_a [Pa], > 0
 * @returns torque [N m] and the crank angle from firing top dead centre [rad], negative: before it
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice (torque of gas force); plane geometry.
 */
export function crankingTorque(input: {
  crank: SliderCrank;
  bore: number;
  clearanceVolume: number;
  inletClosing: number;
  ambientPressure: number;
}): { torque: number; angle: number } {
  const { crank, bore, inletClosing, ambientPressure } = input;
  requireAll(positive, { ambientPressure });
  const trapped = trappedVolume(input);
  const area = boreArea(bore);
  const volumeAt = cylinderVolume(input);
  // The piston's speed at one radian a second is the lever arm of its force.
  const leverAt = pistonVelocityOver(crank, 1);
  const torqueAt = (angle: number): number => {
    const pressure = ambientPressure * (trapped / volumeAt(angle)) ** EXPONENT;
    return (pressure - ambientPressure) * area * leverAt(angle);
  };
  const { at, value } = greatestBetween(torqueAt, inletClosing - Math.PI, 0, CELLS);
  return { torque: value, angle: at };
}
