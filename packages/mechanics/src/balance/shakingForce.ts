import { finite, requireAll } from "../check/requireAll.ts";
import { greatestOverTurn } from "../kinematics/greatestOverTurn.ts";
import { localCrankAngle } from "../kinematics/localCrankAngle.ts";
import { pistonAcceleration } from "../kinematics/pistonAcceleration.ts";
import { type MovingMasses, requireMovingMasses } from "./MovingMasses.ts";

/** Shaking force and couple in the engine's frame. */
export interface ShakingForce {
  /** force across the reference axis [N], + to the side a throw moves to after the reference axis */
  readonly forceX: number;
  /** force along the reference axis [N], + away from the crank */
  readonly forceY: number;
  /** sum of axial position times forceX [N m]: the yawing couple of a reference axis that stands upright */
  readonly coupleX: number;
  /** sum of axial position times forceY [N m]: the pitching couple of a reference axis that stands upright */
  readonly coupleY: number;
}

function sum(input: MovingMasses, crankAngle: number, angularSpeed: number): ShakingForce {
  let [forceX, forceY, coupleX, coupleY] = [0, 0, 0, 0];
  const add = (force: number, direction: number, axialPosition: number) => {
    const [x, y] = [force * Math.sin(direction), force * Math.cos(direction)];
    forceX += x;
    forceY += y;
    coupleX += axialPosition * x;
    coupleY += axialPosition * y;
  };
  for (const { crank, mass, pinAngle, bankAngle, axialPosition } of input.reciprocating) {
    const angle = localCrankAngle({ crankAngle, pinAngle, bankAngle });
    add(-mass * pistonAcceleration(crank, angle, angularSpeed), bankAngle, axialPosition);
  }
  for (const { mass, radius, angle, axialPosition } of input.revolving) {
    add(mass * radius * angularSpeed ** 2, crankAngle + angle, axialPosition);
  }
  return { forceX, forceY, coupleX, coupleY };
}

/**
 * Shaking force and couple of the whole engine on its mounts at one crank angle, from the exact acceleration
 * of every piston and the pull of every mass on the crankshaft. Rods count as two masses, the engine as rigid,
 * the speed as constant; the torque about the crank axis is not part of it.
 * @param input.reciprocating each cylinder
 * @param input.revolving each mass on the crankshaft: throws with big ends, counterweights
 * @param input.crankAngle [rad], 0 with the throw of pin angle 0 along the reference axis
 * @param input.angularSpeed crankshaft speed [rad/s], constant
 * @returns force and couple the moving parts exert on the engine
 * @throws RangeError when nothing moves, a mechanism cannot turn or a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function shakingForce(
  input: MovingMasses & { crankAngle: number; angularSpeed: number },
): ShakingForce {
  const { crankAngle, angularSpeed } = input;
  requireMovingMasses(input);
  requireAll(finite, { crankAngle, angularSpeed });
  return sum(input, crankAngle, angularSpeed);
}

/** The greatest size over a turn, [N] or [N m], and the crank angle [rad] where it lies. */
export type GreatestShaking = ReturnType<typeof greatestOverTurn>;

/**
 * Greatest shaking force and greatest shaking couple over a turn, each the size of its two components together.
 * @param input.reciprocating each cylinder
 * @param input.revolving each mass on the crankshaft
 * @param input.angularSpeed crankshaft speed [rad/s], constant
 * @returns force [N] and couple [N m] with the crank angle where each is greatest
 * @throws RangeError when nothing moves, a mechanism cannot turn or a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function greatestShakingForce(input: MovingMasses & { angularSpeed: number }): {
  force: GreatestShaking;
  couple: GreatestShaking;
} {
  const { angularSpeed } = input;
  requireMovingMasses(input);
  requireAll(finite, { angularSpeed });
  const size = (part: "force" | "couple") => (angle: number) => {
    const found = sum(input, angle, angularSpeed);
    return Math.hypot(found[`${part}X`], found[`${part}Y`]);
  };
  return { force: greatestOverTurn(size("force")), couple: greatestOverTurn(size("couple")) };
}
