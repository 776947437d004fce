import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Splits a connecting rod into a mass that turns with the crankpin and one that moves with the piston. It
 * keeps mass and centre of gravity, not the moment of inertia. Weighing each end with the rod level gives the
 * same.
 * @param input.mass whole rod with its bolts [kg], > 0
 * @param input.rodLength between centres [m], > 0
 * @param input.centreOfGravityFromBigEnd distance from the big end's centre [m], > 0 and below the length
 * @returns rotating and reciprocating mass [kg]
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function twoMassRod(input: { mass: number; rodLength: number; centreOfGravityFromBigEnd: number }): {
  rotating: number;
  reciprocating: number;
} {
  const { mass, rodLength, centreOfGravityFromBigEnd } = input;
  requireAll(positive, { mass, rodLength });
  requireAll({ above: 0, below: rodLength }, { centreOfGravityFromBigEnd });
  const reciprocating = (mass * centreOfGravityFromBigEnd) / rodLength;
  return { rotating: mass - reciprocating, reciprocating };
}
