import { positive, requireAll, share } from "../check/requireAll.ts";

/** One of two rings pressed together; a solid shaft has a bore of 0. */
export interface PressedRing {
  /** Young's modulus [Pa], > 0 */
  readonly elasticModulus: number;
  /** [-], 0 up to 0.5 */
  readonly poissonRatio: number;
}

export interface PressFit {
  /** diametral interference [m], >= 0 */
  readonly interference: number;
  /** diameter of the joint [m], > 0 */
  readonly diameter: number;
  /** outer diameter of the outer ring [m], above the joint's */
  readonly outerDiameter: number;
  /** bore of the inner ring [m], >= 0 and below the joint's; 0 for a solid shaft */
  readonly innerBore: number;
  readonly outer: PressedRing;
  readonly inner: PressedRing;
}

/**
 * Pressure in a press fit of two rings, both elastic (Lamé):
 * p = delta / (D [ (1/E_o) ((D_o^2 + D^2)/(D_o^2 - D^2) + nu_o) + (1/E_i) ((D^2 + d_i^2)/(D^2 - d_i^2) - nu_i) ]).
 * @param fit sizes and materials
 * @returns pressure [Pa], 0 without interference
 * @throws RangeError when a value is out of range
 *
 * Source: Shigley's Mechanical Engineering Design, press and shrink fits.
 */
export function pressFitPressure(fit: PressFit): number {
  const { interference, diameter, outerDiameter, innerBore, outer, inner } = fit;
  requireAll({ atLeast: 0 }, { interference });
  requireAll(positive, { diameter });
  requireAll({ above: diameter }, { outerDiameter });
  requireAll({ atLeast: 0, below: diameter }, { innerBore });
  for (const { elasticModulus, poissonRatio } of [outer, inner]) {
    requireAll(positive, { elasticModulus });
    requireAll({ atLeast: 0, below: 0.5 }, { poissonRatio });
  }
  const around = (diameter ** 2 + innerBore ** 2) / (diameter ** 2 - innerBore ** 2);
  const outside = (outerDiameter ** 2 + diameter ** 2) / (outerDiameter ** 2 - diameter ** 2);
  const give =
    (outside + outer.poissonRatio) / outer.elasticModulus +
    (around - inner.poissonRatio) / inner.elasticModulus;
  return interference / (diameter * give);
}

/**
 * Torque that a press fit carries by friction, T = mu p pi D^2 L / 2.
 * @param input.pressure in the joint [Pa], >= 0
 * @param input.diameter of the joint [m], > 0
 * @param input.length of the joint [m], > 0
 * @param input.friction [-], 0 to 1
 * @returns torque [N m]
 * @throws RangeError when a value is out of range
 *
 * Source: Shigley's Mechanical Engineering Design, press and shrink fits.
 */
export function pressFitTorque(input: {
  pressure: number;
  diameter: number;
  length: number;
  friction: number;
}): number {
  const { pressure, diameter, length, friction } = input;
  requireAll({ atLeast: 0 }, { pressure });
  requireAll(positive, { diameter, length });
  requireAll(share, { friction });
  return (friction * pressure * Math.PI * diameter ** 2 * length) / 2;
}

/**
 * Greatest hoop stress of the outer ring, at the joint: p (D_o^2 + D^2)/(D_o^2 - D^2).
 * @param fit.pressure in the joint [Pa], >= 0
 * @param fit.diameter of the joint [m], > 0
 * @param fit.outerDiameter [m], above the joint's
 * @returns tensile stress [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: Lamé, in Shigley's Mechanical Engineering Design.
 */
export function pressFitHoopStress(fit: {
  pressure: number;
  diameter: number;
  outerDiameter: number;
}): number {
  const { pressure, diameter, outerDiameter } = fit;
  requireAll({ atLeast: 0 }, { pressure });
  requireAll(positive, { diameter });
  requireAll({ above: diameter }, { outerDiameter });
  return (pressure * (outerDiameter ** 2 + diameter ** 2)) / (outerDiameter ** 2 - diameter ** 2);
}
