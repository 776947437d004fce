import { positive, requireAll, requireThat } from "../check/requireAll.ts";
import { leastOnInterval } from "../outline/leastOnInterval.ts";
import { cycleSteps, fourStrokeCycle } from "./fourStrokeCycle.ts";
import type { LiftCurve } from "./LiftCurve.ts";
import { requireValveSpring, type ValveSpring } from "./springForce.ts";

/**
 * Crankshaft speed at which the spring can no longer hold the train to the cam:
 * omega = sqrt(F(L) / (m |d2L/dtheta2|)), the least over every crank angle at which the cam lets the valve
 * slow down. The train is rigid here: flex, gas forces and spring surge lower the true speed.
 * @param input.curve lift of the valve; its curvature decides, so a measured table wants a fair window
 * @param input.equivalentMass of the train at the valve m [kg], > 0
 * @param input.seatForce spring force on the shut valve [N], >= 0
 * @param input.springRate [N/m], > 0
 * @returns crankshaft speed [rad/s] and the crank angle [rad] from overlap top dead centre where contact goes
 * @throws RangeError when a value is out of range or the lift curve has no nose
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function lossOfContactSpeed(
  input: ValveSpring & { readonly curve: LiftCurve; readonly equivalentMass: number },
): { angularSpeed: number; angle: number } {
  const { curve, equivalentMass, seatForce, springRate } = input;
  requireAll(positive, { equivalentMass });
  requireValveSpring(input);
  const speedAt = (angle: number): number => {
    const { lift, curvature } = curve.at(angle);
    if (lift === 0 || curvature >= 0) return Number.POSITIVE_INFINITY;
    return Math.sqrt((seatForce + springRate * lift) / (equivalentMass * -curvature));
  };
  const half = fourStrokeCycle / 2;
  const least = leastOnInterval(speedAt, -half, half, cycleSteps);
  requireThat(Number.isFinite(least.value), "curve", least.value, "a lift that slows down towards its nose");
  return { angularSpeed: least.value, angle: least.at };
}
