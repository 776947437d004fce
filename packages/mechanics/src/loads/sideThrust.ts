import { finite, requireAll } from "../check/requireAll.ts";

/**
 * Side thrust of the piston on the cylinder, N sin(phi). Positive thrust acts on the -x side of the bore, the
 * major thrust side, in the expansion stroke.
 * @param input.rodForce axial force in the rod [N], + compression
 * @param input.rodAngle rod angle [rad], within a quarter turn either way
 * @returns force [N], + on the -x side
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function sideThrust(input: { rodForce: number; rodAngle: number }): number {
  requireAll(finite, { rodForce: input.rodForce });
  requireAll({ above: -Math.PI / 2, below: Math.PI / 2 }, { rodAngle: input.rodAngle });
  return input.rodForce * Math.sin(input.rodAngle);
}
