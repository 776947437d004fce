import { notNegative, requireAll } from "../check/requireAll.ts";
import { greatestBetween } from "../kinematics/greatestOverTurn.ts";
import { rodAngle } from "../kinematics/rodAngle.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { crankpinLoad, crankTorque } from "./crankpinLoad.ts";
import { gasForce } from "./gasForce.ts";
import { rodAxialForce } from "./rodAxialForce.ts";
import { sideThrust } from "./sideThrust.ts";

/** One cylinder at one speed. */
export interface RunningCylinder {
  readonly crank: SliderCrank;
  /** [m], > 0 */
  readonly bore: number;
  /** absolute gas pressure [Pa] by crank angle [rad], 0 at firing top dead centre, repeating every two turns */
  readonly pressureAt: (angle: number) => number;
  /** pressure under the piston [Pa], >= 0 */
  readonly casePressure: number;
  /** [kg], >= 0 */
  readonly reciprocatingMass: number;
  /** mass of the rod that turns with the crankpin [kg], >= 0 */
  readonly rotatingRodMass: number;
  /** [rad/s], constant */
  readonly angularSpeed: number;
}

/** Forces of one cylinder at one crank angle. */
export interface CrankForces {
  /** along the rod [N], compression + */
  readonly rod: number;
  /** piston on the cylinder [N], + on the thrust side */
  readonly side: number;
  /** rod on the crankpin [N]: size, and parts across and along the cylinder */
  readonly crankpin: { readonly x: number; readonly y: number; readonly magnitude: number };
  /** on the crankshaft [N m], + with rotation */
  readonly torque: number;
}

/**
 * Forces of gas and inertia in one cylinder at any crank angle. Friction and gravity are left out; the rod is two
 * masses, at its ends.
 * @param cylinder what runs and how fast
 * @returns the forces by crank angle [rad]
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function crankForces(cylinder: RunningCylinder): (angle: number) => CrankForces {
  const { crank, bore, pressureAt, casePressure, reciprocatingMass, rotatingRodMass, angularSpeed } =
    cylinder;
  requireAll(notNegative, { casePressure, reciprocatingMass, rotatingRodMass });
  return (angle) => {
    const rodForce = rodAxialForce({
      crank,
      angle,
      angularSpeed,
      reciprocatingMass,
      gasForce: gasForce({ cylinderPressure: pressureAt(angle), casePressure, bore }),
    });
    // Each force is worked out when it is asked for: a search over the cycle wants one of them.
    return {
      rod: rodForce,
      get side() {
        return sideThrust({ rodForce, rodAngle: rodAngle(crank, angle) });
      },
      get crankpin() {
        return crankpinLoad({ crank, angle, angularSpeed, rodForce, rotatingRodMass });
      },
      get torque() {
        return crankTorque({ crank, angle, rodForce });
      },
    };
  };
}

/** Two degrees of crank: forces change little within it, and the peak is refined. */
const CELLS = 360;
const CYCLE = 4 * Math.PI;

/**
 * Greatest value over a whole cycle of two turns, from bottom dead centre before firing.
 * @param value by crank angle [rad]
 * @returns the value and the crank angle [rad] where it lies, -pi up to 3 pi
 */
export function greatestOverCycle(value: (angle: number) => number): { angle: number; value: number } {
  const { at, value: greatest } = greatestBetween(value, -Math.PI, CYCLE - Math.PI, CELLS);
  return { angle: at, value: greatest };
}

/**
 * Mean over a whole cycle of two turns, by the trapezoid rule.
 * @param value by crank angle [rad]
 */
export function meanOverCycle(value: (angle: number) => number): number {
  let sum = 0;
  for (let i = 0; i < CELLS; i++) sum += value(-Math.PI + (i * CYCLE) / CELLS);
  return sum / CELLS;
}
