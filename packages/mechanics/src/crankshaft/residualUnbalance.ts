import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Permissible residual unbalance of a rotor by balance quality grade, U = G m / omega.
 * @param input.grade G as a speed [m/s], > 0: grade G 6.3 is 0.0063 m/s
 * @param input.rotorMass [kg], > 0
 * @param input.angularSpeed greatest service speed [rad/s], > 0
 * @returns unbalance [kg m]; 1 g mm is 1e-6 kg m
 * @throws RangeError when a value is not above zero
 *
 * Source: ISO 21940-11.
 */
export function residualUnbalance(input: { grade: number; rotorMass: number; angularSpeed: number }): number {
  const { grade, rotorMass, angularSpeed } = input;
  requireAll(positive, { grade, rotorMass, angularSpeed });
  return (grade * rotorMass) / angularSpeed;
}
