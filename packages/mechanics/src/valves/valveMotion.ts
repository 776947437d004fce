import { finite, requireAll } from "../check/requireAll.ts";
import { leastOnInterval } from "../outline/leastOnInterval.ts";
import { cycleSteps, fourStrokeCycle } from "./fourStrokeCycle.ts";
import type { LiftCurve } from "./LiftCurve.ts";

/** A valve at a steady crankshaft speed, its train taken as stiff. */
export interface RunningValve {
  readonly curve: LiftCurve;
  /** of the crankshaft [rad/s] */
  readonly angularSpeed: number;
}

/** A greatest value over the cycle, and the crank angle [rad] from overlap top dead centre where it lies. */
export interface OverCycle {
  readonly value: number;
  readonly angle: number;
}

/**
 * Speed of a valve along its stem, dL/dtheta times the crankshaft's speed.
 * @param input.curve lift of the valve
 * @param input.angularSpeed of the crankshaft [rad/s]
 * @param input.angle crank angle from overlap top dead centre [rad]
 * @returns [m/s], + while it opens
 * @throws RangeError when a value is not finite
 *
 * Source: kinematics of a cam, chain rule.
 */
export function valveVelocity({
  curve,
  angularSpeed,
  angle,
}: RunningValve & { readonly angle: number }): number {
  requireAll(finite, { angularSpeed, angle });
  return curve.at(angle).slope * angularSpeed;
}

/**
 * Acceleration of a valve along its stem at a steady speed, d2L/dtheta2 times the square of the crankshaft's speed.
 * @param input.curve lift of the valve
 * @param input.angularSpeed of the crankshaft [rad/s]
 * @param input.angle crank angle from overlap top dead centre [rad]
 * @returns [m/s2], + off its seat; - over the nose, where the spring has to bring it back
 * @throws RangeError when a value is not finite
 *
 * Source: kinematics of a cam, chain rule.
 */
export function valveAcceleration({
  curve,
  angularSpeed,
  angle,
}: RunningValve & { readonly angle: number }): number {
  requireAll(finite, { angularSpeed, angle });
  return curve.at(angle).curvature * angularSpeed ** 2;
}

function greatest(of: (angle: number) => number): OverCycle {
  const half = fourStrokeCycle / 2;
  const least = leastOnInterval((angle) => -of(angle), -half, half, cycleSteps);
  // Nothing moves at a standstill, and a sign of zero would be seen.
  return { value: least.value === 0 ? 0 : -least.value, angle: least.at };
}

/**
 * Greatest speed of a valve over the cycle, opening or closing.
 * @param valve lift of the valve and speed of the crankshaft [rad/s]
 * @returns speed [m/s], >= 0, and where
 * @throws RangeError when the speed is not finite
 *
 * Source: {@link valveVelocity}.
 */
export function greatestValveSpeed(valve: RunningValve): OverCycle {
  requireAll(finite, { angularSpeed: valve.angularSpeed });
  return greatest((angle) => Math.abs(valveVelocity({ ...valve, angle })));
}

/**
 * Greatest acceleration of a valve towards its seat over the cycle: what the spring must give the train. It holds
 * over the nose, where a stand-in curve is at its best.
 * @param valve lift of the valve and speed of the crankshaft [rad/s]
 * @returns acceleration [m/s2], >= 0, and where
 * @throws RangeError when the speed is not finite
 *
 * Source: {@link valveAcceleration}.
 */
export function greatestValveDeceleration(valve: RunningValve): OverCycle {
  requireAll(finite, { angularSpeed: valve.angularSpeed });
  return greatest((angle) => Math.max(0, -valveAcceleration({ ...valve, angle })));
}
