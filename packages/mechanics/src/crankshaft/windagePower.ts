import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Power that free discs lose in a mist, both faces: P = C_M/2 rho omega^3 R^5 with C_M = 0.146 Re^(-1/5) and
 * Re = rho omega R^2 / mu, turbulent. A throw with its counterweights is taken as one disc. Good for
 * comparing builds only: the density of the oil mist in a crankcase is not known within a factor of three.
 * @param input.discs how many, > 0
 * @param input.radius R [m], > 0
 * @param input.angularSpeed omega [rad/s], > 0
 * @param input.mistDensity rho [kg/m3], > 0
 * @param input.mistViscosity mu [Pa s], > 0
 * @returns power [W]
 * @throws RangeError when a value is out of range
 *
 * Source: Schlichting, Boundary-Layer Theory (free rotating disc; constants from memory).
 */
export function windagePower(input: {
  discs: number;
  radius: number;
  angularSpeed: number;
  mistDensity: number;
  mistViscosity: number;
}): number {
  const { discs, radius, angularSpeed, mistDensity, mistViscosity } = input;
  requireAll(positive, { discs, radius, angularSpeed, mistDensity, mistViscosity });
  const reynolds = (mistDensity * angularSpeed * radius ** 2) / mistViscosity;
  return (discs / 2) * 0.146 * reynolds ** -0.2 * mistDensity * angularSpeed ** 3 * radius ** 5;
}
