import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Elastic stretch of the rod at the top dead centre of the gas exchange: a bar of the beam's mean area pulled
 * by the piston group and half the small end. Cap ovalisation and crank deflection add to it
 * (0.02-0.06 mm, common practice).
 * @param input.pistonGroupMass piston, pin, rings, retainers [kg], > 0
 * @param input.smallEndMass reciprocating share of the rod [kg], >= 0
 * @param input.acceleration magnitude of the piston's acceleration [m/s2], >= 0
 * @param input.rodLength between centres [m], > 0
 * @param input.elasticModulus of the rod [Pa], > 0
 * @param input.beamArea mean cross-section of the beam [m2], > 0
 * @returns stretch [m]
 * @throws RangeError when a value is out of range
 *
 * Source: Shigley's Mechanical Engineering Design (bar in tension).
 */
export function rodStretch(input: {
  pistonGroupMass: number;
  smallEndMass: number;
  acceleration: number;
  rodLength: number;
  elasticModulus: number;
  beamArea: number;
}): number {
  const { pistonGroupMass, smallEndMass, acceleration, rodLength, elasticModulus, beamArea } = input;
  requireAll(positive, { pistonGroupMass, rodLength, elasticModulus, beamArea });
  requireAll(notNegative, { smallEndMass, acceleration });
  const force = (pistonGroupMass + smallEndMass / 2) * acceleration;
  return (force * rodLength) / (elasticModulus * beamArea);
}
