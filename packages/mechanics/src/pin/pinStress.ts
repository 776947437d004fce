import { notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";
import { pinWallRatio } from "./pinWallRatio.ts";

/**
 * Bending stress at the middle of the pin: a beam on two bosses whose pressure falls linearly to zero
 * outwards, loaded evenly by the small end. A boss that gives lowers it. The rounded constant 1.2 puts it 1.8
 * % below the beam itself.
 * @param input.force load on the pin [N], >= 0
 * @param input.pinDiameter [m], > 0
 * @param input.pinBore [m], >= 0 and below the diameter
 * @param input.pinLength [m], > 0
 * @param input.bossDistance between the inner faces of the bosses [m], > 0 and below the pin length
 * @param input.smallEndWidth width of the rod's small end [m], > 0
 * @returns bending stress [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: Kolchin & Demidov, Design of Automotive Engines (from memory); beam statics.
 */
export function pinBendingStress(input: {
  force: number;
  pinDiameter: number;
  pinBore: number;
  pinLength: number;
  bossDistance: number;
  smallEndWidth: number;
}): number {
  const { force, pinDiameter, pinLength, bossDistance, smallEndWidth } = input;
  const k = pinWallRatio(input);
  requireAll(notNegative, { force });
  requireAll(positive, { pinLength, bossDistance, smallEndWidth });
  requireThat(
    bossDistance < pinLength && smallEndWidth <= pinLength,
    "pinLength",
    pinLength,
    `more than bossDistance ${bossDistance} and at least smallEndWidth ${smallEndWidth}`,
  );
  return (
    (force * (pinLength + 2 * bossDistance - 1.5 * smallEndWidth)) / (1.2 * (1 - k ** 4) * pinDiameter ** 3)
  );
}

/**
 * Greatest shear stress of the pin between small end and boss, each section carrying half the load.
 * @param input.force load on the pin [N], >= 0
 * @param input.pinDiameter [m], > 0
 * @param input.pinBore [m], >= 0 and below the diameter
 * @returns shear stress [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: Kolchin & Demidov, Design of Automotive Engines (from memory).
 */
export function pinShearStress(input: { force: number; pinDiameter: number; pinBore: number }): number {
  const { force, pinDiameter } = input;
  const k = pinWallRatio(input);
  requireAll(notNegative, { force });
  return (0.85 * force * (1 + k + k ** 2)) / ((1 - k ** 4) * pinDiameter ** 2);
}

/**
 * Ovalisation of the pin: growth of its diameter across the load.
 * @param input.force load on the pin [N], >= 0
 * @param input.pinDiameter [m], > 0
 * @param input.pinBore [m], between 0.4 and 0.8 of the diameter, where the formula was fitted
 * @param input.pinLength [m], > 0
 * @param input.elasticModulus of the pin [Pa], > 0
 * @returns growth of the diameter [m]
 * @throws RangeError when a value is out of range
 *
 * Source: Kolchin & Demidov, Design of Automotive Engines (from memory).
 */
export function pinOvalisation(input: {
  force: number;
  pinDiameter: number;
  pinBore: number;
  pinLength: number;
  elasticModulus: number;
}): number {
  const { force, pinLength, elasticModulus } = input;
  const k = pinWallRatio(input);
  requireAll(notNegative, { force });
  requireAll(positive, { pinLength, elasticModulus });
  requireAll({ atLeast: 0.4, atMost: 0.8 }, { "pinBore / pinDiameter": k });
  const shape = ((1 + k) / (1 - k)) ** 3 * (0.1 - (k - 0.4) ** 3);
  return ((1.35 * force) / (elasticModulus * pinLength)) * shape;
}
