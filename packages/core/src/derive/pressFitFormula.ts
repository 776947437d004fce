interface Ring {
  /** Young's modulus, a symbol or a number in Pa. */
  readonly modulus: string;
  readonly poissonRatio: number;
}

/**
 * The formula of `pressFitPressure` of mechanics, Lamé's two thick rings, over symbols.
 * @param fit.innerBore symbol or sum; absent for a solid inner part
 */
export function pressFitFormula(fit: {
  readonly interference: string;
  readonly diameter: string;
  readonly outerDiameter: string;
  readonly innerBore?: string;
  readonly outer: Ring;
  readonly inner: Ring;
}): string {
  const { interference, diameter: D, outerDiameter: O, innerBore: i, outer, inner } = fit;
  const outside = `((${O}^2 + ${D}^2) / (${O}^2 - ${D}^2) + ${outer.poissonRatio}) / ${outer.modulus}`;
  const shape = i === undefined ? "1" : `(${D}^2 + (${i})^2) / (${D}^2 - (${i})^2)`;
  return `${interference} / (${D} * (${outside} + (${shape} - ${inner.poissonRatio}) / ${inner.modulus}))`;
}
