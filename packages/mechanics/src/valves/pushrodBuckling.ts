import { positive, requireAll } from "../check/requireAll.ts";
import { type ColumnBuckling, columnBucklingLoad } from "../loads/rodBucklingLoad.ts";

/**
 * Buckling load of a tubular pushrod, ends free to turn: P = pi^2 E I / L^2 with I = pi (d_o^4 - d_i^4) / 64
 * as long as it is slender, Johnson's parabola for a shorter one, for which Euler's load is too high.
 * @param input.outerDiameter d_o [m], > 0
 * @param input.wall [m], > 0 and at most half the outer diameter, at which the rod is solid
 * @param input.length between the contacts L [m], > 0
 * @param input.elasticModulus E [Pa], > 0
 * @param input.yieldStrength in compression [Pa], > 0
 * @returns load [N], slenderness [-] and the formula used
 * @throws RangeError when a value is out of range
 *
 * Source: Shigley's Mechanical Engineering Design.
 */
export function pushrodBucklingLoad(input: {
  outerDiameter: number;
  wall: number;
  length: number;
  elasticModulus: number;
  yieldStrength: number;
}): ColumnBuckling {
  const { outerDiameter, wall, length, elasticModulus, yieldStrength } = input;
  requireAll(positive, { outerDiameter, length, elasticModulus, yieldStrength });
  requireAll({ above: 0, atMost: outerDiameter / 2 }, { wall });
  const innerDiameter = outerDiameter - 2 * wall;
  return columnBucklingLoad({
    effectiveLength: length,
    area: (Math.PI / 4) * (outerDiameter ** 2 - innerDiameter ** 2),
    secondMoment: (Math.PI / 64) * (outerDiameter ** 4 - innerDiameter ** 4),
    elasticModulus,
    yieldStrength,
  });
}

/**
 * Buckling load over the load on the pushrod: the force of the open spring times the rocker ratio, times a
 * factor for the acceleration of the train.
 * @param input.bucklingLoad [N], > 0
 * @param input.openForce spring force at full lift [N], > 0
 * @param input.rockerRatio valve lift over pushrod lift [-], > 0
 * @param input.dynamicFactor [-], at least 1; 2 is common practice
 * @returns reserve [-], below 1 the pushrod buckles
 * @throws RangeError when a value is out of range
 *
 * Source: lever law; factor common practice.
 */
export function pushrodReserve(input: {
  bucklingLoad: number;
  openForce: number;
  rockerRatio: number;
  dynamicFactor: number;
}): number {
  const { bucklingLoad, openForce, rockerRatio, dynamicFactor } = input;
  requireAll(positive, { bucklingLoad, openForce, rockerRatio });
  requireAll({ atLeast: 1 }, { dynamicFactor });
  return bucklingLoad / (dynamicFactor * openForce * rockerRatio);
}
