import { finite, positive, requireAll, requireThat } from "../check/requireAll.ts";
import { greatestOverTurn } from "../kinematics/greatestOverTurn.ts";
import { pistonTravelOver } from "../kinematics/pistonTravel.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { boreArea } from "./boreArea.ts";
import type { Cylinder } from "./cylinderVolumeAt.ts";

/** Where a cylinder's crankpin stands and where the cylinder points [rad], both in the sense of rotation. */
export interface CylinderPhase {
  readonly pinAngle: number;
  readonly bankAngle: number;
}

/**
 * Volume that all pistons together have swept below their tops, as a function of the crank angle, checked once.
 * @param input.crank the mechanism, the same for all cylinders
 * @param input.bore finished bore [m], > 0
 * @param input.cylinders where each stands; at least one
 * @returns crank angle [rad] → volume [m3], from nothing to the engine's displacement
 * @throws RangeError when a value is out of range or there is no cylinder
 *
 * Source: plane geometry.
 */
export function sweptTogether(input: {
  readonly crank: SliderCrank;
  readonly bore: number;
  readonly cylinders: readonly CylinderPhase[];
}): (angle: number) => number {
  const { crank, bore, cylinders } = input;
  requireThat(cylinders.length > 0, "cylinders", cylinders.length, "at least one");
  for (const { pinAngle, bankAngle } of cylinders) requireAll(finite, { pinAngle, bankAngle });
  const area = boreArea(bore);
  const travel = pistonTravelOver(crank);
  const phases = cylinders.map(({ pinAngle, bankAngle }) => pinAngle - bankAngle);
  return (angle) => area * phases.reduce((all, phase) => all + travel(angle + phase), 0);
}

/**
 * Volume over all pistons together, as a function of the crank angle, checked once: the sum of the cylinders'.
 * @param input one cylinder, the same for all
 * @param input.cylinders where each stands; at least one
 * @returns crank angle [rad] → volume [m3]
 * @throws RangeError when a value is out of range or there is no cylinder
 *
 * Source: plane geometry.
 */
export function engineVolume(
  input: Cylinder & { readonly cylinders: readonly CylinderPhase[] },
): (angle: number) => number {
  const { clearanceVolume, cylinders } = input;
  requireAll(positive, { clearanceVolume });
  const swept = sweptTogether(input);
  return (angle) => cylinders.length * clearanceVolume + swept(angle);
}

/**
 * Greatest volume over all pistons together in a turn.
 * @param input one cylinder, the same for all
 * @param input.cylinders where each stands; at least one
 * @returns volume [m3]
 * @throws RangeError when a value is out of range or there is no cylinder
 *
 * Source: plane geometry.
 */
export function greatestEngineVolume(
  input: Cylinder & { readonly cylinders: readonly CylinderPhase[] },
): number {
  return greatestOverTurn(engineVolume(input)).value;
}
