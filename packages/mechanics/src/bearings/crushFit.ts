import { finite, notNegative, positive, requireAll } from "../check/requireAll.ts";
import { type PressedRing, pressFitPressure } from "../joints/pressFit.ts";

/** A pair of half shells pressed into a housing that gives way. */
export interface CrushFit {
  /** height by which each half shell stands proud [m], >= 0 */
  readonly crush: number;
  /** [m], > 0 */
  readonly housingBore: number;
  /** outer diameter of a ring as stiff as the housing [m], above its bore */
  readonly housingOuterDiameter: number;
  /** [m], > 0 and below half the bore */
  readonly shellWall: number;
  readonly housing: PressedRing;
  /** the backing of the shells */
  readonly shell: PressedRing;
}

/**
 * Diametral interference of two half shells that each stand proud by their crush: their circumference is longer than
 * the housing's by twice the crush, 2 a_c / pi.
 * @param crush [m], >= 0
 * @returns interference [m]
 * @throws RangeError when the crush is out of range
 *
 * Source: plane geometry; ISO 6524 terms.
 */
export function crushInterference(crush: number): number {
  requireAll(notNegative, { crush });
  return (2 * crush) / Math.PI;
}

/**
 * How far the interference of the shells changes with heat: shells and housing grow by their own expansions.
 * @param input.housingBore [m], > 0
 * @param input.shellExpansion [1/K]
 * @param input.shellRise temperature of the shells above the cold state [K]
 * @param input.housingExpansion [1/K]
 * @param input.housingRise temperature of the housing above the cold state [K]
 * @returns change of the diametral interference [m], - when the housing grows away
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function hotInterferenceChange(input: {
  housingBore: number;
  shellExpansion: number;
  shellRise: number;
  housingExpansion: number;
  housingRise: number;
}): number {
  const { housingBore, shellExpansion, shellRise, housingExpansion, housingRise } = input;
  requireAll(positive, { housingBore });
  requireAll(finite, { shellExpansion, shellRise, housingExpansion, housingRise });
  return housingBore * (shellExpansion * shellRise - housingExpansion * housingRise);
}

/**
 * Pressure that holds a pair of shells in a housing that gives way (Lamé), cold or hot. It lies below the rigid
 * housing's `crushPressure` and nears it as the housing grows stiff and the shell thin.
 * @param input the shells and their housing
 * @param input.interferenceChange of the heat, from `hotInterferenceChange` [m]; 0 cold
 * @returns pressure [Pa]; 0 once the housing has grown away
 * @throws RangeError when a value is out of range
 *
 * Source: Lamé, in Shigley's Mechanical Engineering Design; the housing as a round ring.
 */
export function crushFitPressure(input: CrushFit & { readonly interferenceChange: number }): number {
  const { crush, housingBore, housingOuterDiameter, shellWall, interferenceChange } = input;
  requireAll(finite, { interferenceChange });
  requireAll(positive, { shellWall, housingBore });
  return pressFitPressure({
    interference: Math.max(0, crushInterference(crush) + interferenceChange),
    diameter: housingBore,
    outerDiameter: housingOuterDiameter,
    innerBore: housingBore - 2 * shellWall,
    outer: input.housing,
    inner: input.shell,
  });
}

/**
 * Growth of the housing bore under the pressure of the shells, p (D/E) ((D_o^2 + D^2)/(D_o^2 - D^2) + nu): what a
 * clearance from the sizes of loose parts leaves out.
 * @param input.pressure of the shells [Pa], >= 0
 * @param input.housingBore [m], > 0
 * @param input.housingOuterDiameter [m], above its bore
 * @param input.housing its material
 * @returns growth across the diameter [m]
 * @throws RangeError when a value is out of range
 *
 * Source: Lamé, in Shigley's Mechanical Engineering Design; the housing as a round ring.
 */
export function housingGrowth(input: {
  pressure: number;
  housingBore: number;
  housingOuterDiameter: number;
  housing: PressedRing;
}): number {
  const { pressure, housingBore, housingOuterDiameter, housing } = input;
  const { elasticModulus, poissonRatio } = housing;
  requireAll(notNegative, { pressure });
  requireAll(positive, { housingBore, elasticModulus });
  requireAll({ above: housingBore }, { housingOuterDiameter });
  requireAll({ atLeast: 0, below: 0.5 }, { poissonRatio });
  const [outer, inner] = [housingOuterDiameter ** 2, housingBore ** 2];
  return (pressure * housingBore * ((outer + inner) / (outer - inner) + poissonRatio)) / elasticModulus;
}
