import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Tensile stress in the beam of the rod at the top dead centre of the gas exchange.
 * @param input.mass reciprocating mass and rod mass above the section [kg], > 0
 * @param input.acceleration magnitude of the piston's acceleration at overspeed [m/s2], >= 0
 * @param input.area cross-section [m2], > 0
 * @returns stress [Pa], + tension
 * @throws RangeError when a value is out of range
 *
 * Source: Kolchin & Demidov, Design of Automotive Engines (from memory).
 */
export function beamTension(input: { mass: number; acceleration: number; area: number }): number {
  const { mass, acceleration, area } = input;
  requireAll(positive, { mass, area });
  requireAll(notNegative, { acceleration });
  return (mass * acceleration) / area;
}

/**
 * Compressive stress in the beam of the rod at peak pressure. Inertia relieves it; give an acceleration of 0
 * to leave the relief out, the safe side for an engine that labours at low speed.
 * @param input.gasForce at peak pressure [N], >= 0
 * @param input.mass reciprocating mass and rod mass above the section [kg], > 0
 * @param input.acceleration magnitude of the piston's acceleration at the speed of peak pressure [m/s2], >= 0
 * @param input.area cross-section [m2], > 0
 * @returns stress [Pa], + compression
 * @throws RangeError when a value is out of range
 *
 * Source: Kolchin & Demidov, Design of Automotive Engines (from memory).
 */
export function beamCompression(input: {
  gasForce: number;
  mass: number;
  acceleration: number;
  area: number;
}): number {
  requireAll(notNegative, { gasForce: input.gasForce });
  return input.gasForce / input.area - beamTension(input);
}
