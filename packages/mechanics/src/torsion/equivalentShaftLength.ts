import { notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";

/** A length of round shaft of one diameter. */
export interface ShaftSegment {
  /** [m], > 0 */
  readonly length: number;
  /** outside diameter [m], > 0 */
  readonly diameter: number;
  /** diameter of the bore through it [m], >= 0 and below the outside; 0 when solid */
  readonly boreDiameter: number;
}

/** Sum of L / (D^4 - d^4) [1/m3]: what the twist of a stepped shaft is proportional to. */
function slenderness(segments: readonly ShaftSegment[]): number {
  requireThat(segments.length > 0, "segments", segments.length, "at least one segment");
  return segments.reduce((sum, { length, diameter, boreDiameter }) => {
    requireAll(positive, { length, diameter });
    requireAll({ ...notNegative, below: diameter }, { boreDiameter });
    return sum + length / (diameter ** 4 - boreDiameter ** 4);
  }, 0);
}

/**
 * Length of a solid shaft of one diameter that twists as much as a stepped one under the same torque. The
 * joints between the diameters count as rigid.
 * @param input.segments in any order, at least one
 * @param input.referenceDiameter of the equivalent shaft [m], > 0
 * @returns length [m]
 * @throws RangeError when there is no segment or a value is out of range
 *
 * Source: Bevan, The Theory of Machines.
 */
export function equivalentShaftLength(input: {
  segments: readonly ShaftSegment[];
  referenceDiameter: number;
}): number {
  const { segments, referenceDiameter } = input;
  requireAll(positive, { referenceDiameter });
  return referenceDiameter ** 4 * slenderness(segments);
}

/**
 * Torsional stiffness of a stepped round shaft, pi G / 32 over the sum of L / (D^4 - d^4).
 * @param input.segments in any order, at least one
 * @param input.shearModulus [Pa], > 0
 * @returns stiffness [N m/rad]
 * @throws RangeError when there is no segment or a value is out of range
 *
 * Source: Bevan, The Theory of Machines.
 */
export function steppedShaftStiffness(input: {
  segments: readonly ShaftSegment[];
  shearModulus: number;
}): number {
  const { segments, shearModulus } = input;
  requireAll(positive, { shearModulus });
  return (Math.PI * shearModulus) / (32 * slenderness(segments));
}
