import type { SliderCrank } from "../kinematics/SliderCrank.ts";

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
