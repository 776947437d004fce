import { positive, requireAll } from "../check/requireAll.ts";

/**
 * First natural frequency of the coils of a helical spring held at both ends, round wire:
 * omega_s = d / (D^2 N_a) sqrt(G / (2 rho)), which is pi sqrt(k / m) with the rate k and the mass m of the
 * active coils.
 * @param input.wireDiameter d [m], > 0
 * @param input.meanDiameter of the coil D [m], > 0
 * @param input.activeCoils N_a [-], > 0, not always a whole number
 * @param input.shearModulus G [Pa], > 0
 * @param input.density of the wire rho [kg/m3], > 0
 * @returns angular frequency [rad/s]
 * @throws RangeError when a value is out of range
 *
 * Source: Wahl, Mechanical Springs; Shigley's Mechanical Engineering Design.
 */
export function springSurgeAngularFrequency(input: {
  wireDiameter: number;
  meanDiameter: number;
  activeCoils: number;
  shearModulus: number;
  density: number;
}): number {
  const { wireDiameter, meanDiameter, activeCoils, shearModulus, density } = input;
  requireAll(positive, { wireDiameter, meanDiameter, activeCoils, shearModulus, density });
  return (wireDiameter / (meanDiameter ** 2 * activeCoils)) * Math.sqrt(shearModulus / (2 * density));
}

/**
 * Harmonic of the camshaft that meets the surge of the spring: surge frequency over camshaft speed, the
 * camshaft turning at half crank speed. The higher, the weaker the harmonic.
 * @param input.surgeAngularFrequency [rad/s], > 0
 * @param input.angularSpeed of the crankshaft [rad/s], > 0
 * @returns order [-]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function springSurgeOrder(input: { surgeAngularFrequency: number; angularSpeed: number }): number {
  const { surgeAngularFrequency, angularSpeed } = input;
  requireAll(positive, { surgeAngularFrequency, angularSpeed });
  return surgeAngularFrequency / (angularSpeed / 2);
}
