import { positive, requireAll } from "../check/requireAll.ts";

/** Buckling of a straight, centrally loaded column. */
export interface ColumnBuckling {
  /** buckling load [N] */
  readonly load: number;
  /** effective length over radius of gyration [-] */
  readonly slenderness: number;
  /** the formula that applies: Johnson for stocky columns, Euler for slender ones */
  readonly formula: "Johnson" | "Euler";
}

/**
 * Buckling load of a column, Johnson's parabola below the slenderness sqrt(2 pi^2 E / s_y), Euler above it;
 * both meet there at half the yield strength.
 * @param input.effectiveLength [m], > 0
 * @param input.area cross-section [m2], > 0
 * @param input.secondMoment second moment of area about the axis of bending [m4], > 0
 * @param input.elasticModulus [Pa], > 0
 * @param input.yieldStrength [Pa], > 0
 * @returns load [N], slenderness [-] and the formula used
 * @throws RangeError when a value is not above zero
 *
 * Source: Shigley's Mechanical Engineering Design.
 */
export function columnBucklingLoad(input: {
  effectiveLength: number;
  area: number;
  secondMoment: number;
  elasticModulus: number;
  yieldStrength: number;
}): ColumnBuckling {
  const { effectiveLength, area, secondMoment, elasticModulus, yieldStrength } = input;
  requireAll(positive, { effectiveLength, area, secondMoment, elasticModulus, yieldStrength });
  const slenderness = effectiveLength / Math.sqrt(secondMoment / area);
  const stocky = slenderness ** 2 < (2 * Math.PI ** 2 * elasticModulus) / yieldStrength;
  const stress = stocky
    ? yieldStrength * (1 - (yieldStrength * slenderness ** 2) / (4 * Math.PI ** 2 * elasticModulus))
    : (Math.PI ** 2 * elasticModulus) / slenderness ** 2;
  return { load: area * stress, slenderness, formula: stocky ? "Johnson" : "Euler" };
}

/**
 * Buckling load of a connecting rod: pin-ended in the plane of motion (effective length l), held at both ends
 * sideways (l / 2); the smaller one counts.
 * @param input.rodLength between centres [m], > 0
 * @param input.area cross-section at mid-length [m2], > 0
 * @param input.secondMomentInPlane for bending in the plane of motion [m4], > 0
 * @param input.secondMomentSideways for bending along the crank axis [m4], > 0
 * @param input.elasticModulus [Pa], > 0
 * @param input.yieldStrength in compression [Pa], > 0
 * @returns the smaller load [N], its plane, and both columns
 * @throws RangeError when a value is not above zero
 *
 * Source: Shigley's Mechanical Engineering Design.
 */
export function rodBucklingLoad(input: {
  rodLength: number;
  area: number;
  secondMomentInPlane: number;
  secondMomentSideways: number;
  elasticModulus: number;
  yieldStrength: number;
}): { load: number; plane: "in plane" | "sideways"; inPlane: ColumnBuckling; sideways: ColumnBuckling } {
  const { rodLength, secondMomentInPlane, secondMomentSideways } = input;
  requireAll(positive, { rodLength, secondMomentInPlane, secondMomentSideways });
  const inPlane = columnBucklingLoad({
    ...input,
    effectiveLength: rodLength,
    secondMoment: secondMomentInPlane,
  });
  const sideways = columnBucklingLoad({
    ...input,
    effectiveLength: rodLength / 2,
    secondMoment: secondMomentSideways,
  });
  const plane = inPlane.load <= sideways.load ? "in plane" : "sideways";
  return { load: Math.min(inPlane.load, sideways.load), plane, inPlane, sideways };
}
