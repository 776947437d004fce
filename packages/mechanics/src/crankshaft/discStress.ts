import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Greatest stress in a flat disc of even thickness that turns, at the edge of its hole:
 * sigma = (3 + nu)/4 rho omega^2 R^2 [1 + (1 - nu)/(3 + nu) (r_h/R)^2]. Bolt holes and steps raise it two to
 * three times (common practice).
 * @param input.outerRadius R [m], > 0
 * @param input.holeRadius r_h [m], above 0 and below R
 * @param input.density [kg/m3], > 0
 * @param input.poissonRatio nu [-], 0 up to 0.5
 * @param input.angularSpeed [rad/s], > 0
 * @returns hoop stress at the hole [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: Shigley's Mechanical Engineering Design, rotating rings.
 */
export function discStress(input: {
  outerRadius: number;
  holeRadius: number;
  density: number;
  poissonRatio: number;
  angularSpeed: number;
}): number {
  const { outerRadius, holeRadius, density, poissonRatio, angularSpeed } = input;
  requireAll(positive, { outerRadius, density, angularSpeed });
  requireAll({ above: 0, below: outerRadius }, { holeRadius });
  requireAll({ atLeast: 0, below: 0.5 }, { poissonRatio });
  const shape = 1 + ((1 - poissonRatio) / (3 + poissonRatio)) * (holeRadius / outerRadius) ** 2;
  return ((3 + poissonRatio) / 4) * density * (angularSpeed * outerRadius) ** 2 * shape;
}
