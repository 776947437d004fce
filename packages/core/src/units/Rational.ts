/**
 * An exact fraction of two integers, so that 7/16 in or 1 lbf/in² reaches SI as the double nearest to the
 * true value. Always reduced, denominator positive.
 */
export interface Rational {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let x = a < 0n ? -a : a;
  let y = b < 0n ? -b : b;
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}

/** Makes a reduced fraction. @throws RangeError when the denominator is zero. */
export function rational(numerator: bigint, denominator = 1n): Rational {
  if (denominator === 0n) throw new RangeError("a fraction needs a denominator other than zero");
  const sign = denominator < 0n ? -1n : 1n;
  const divisor = greatestCommonDivisor(numerator, denominator) || 1n;
  return { numerator: (sign * numerator) / divisor, denominator: (sign * denominator) / divisor };
}

export function add(a: Rational, b: Rational): Rational {
  return rational(a.numerator * b.denominator + b.numerator * a.denominator, a.denominator * b.denominator);
}

export function multiply(a: Rational, b: Rational): Rational {
  return rational(a.numerator * b.numerator, a.denominator * b.denominator);
}

export function negate(a: Rational): Rational {
  return { numerator: -a.numerator, denominator: a.denominator };
}

/**
 * Reads a decimal such as `-12.5e-6` exactly.
 * @returns undefined when the text is not a decimal number, or its exponent is beyond ±60.
 */
export function rationalFromDecimal(text: string): Rational | undefined {
  const match = /^([+-]?)(\d+(?:\.\d*)?|\.\d+)(?:[eE]([+-]?\d{1,2}))?$/.exec(text);
  if (match === null) return undefined;
  const [, sign = "", digits = "", exponentText = "0"] = match;
  const exponent = Number(exponentText);
  if (Math.abs(exponent) > 60) return undefined;
  const [whole = "", fraction = ""] = digits.split(".");
  const scale = exponent - fraction.length;
  const integer = BigInt(`${whole}${fraction}` || "0") * (sign === "-" ? -1n : 1n);
  return scale >= 0 ? rational(integer * 10n ** BigInt(scale)) : rational(integer, 10n ** BigInt(-scale));
}

function bitLength(value: bigint): number {
  return value.toString(2).length;
}

/** The double nearest to the fraction: the quotient is taken to 64 significant bits before rounding. */
export function toNumber(value: Rational): number {
  if (value.numerator === 0n) return 0;
  const magnitude = value.numerator < 0n ? -value.numerator : value.numerator;
  const shift = 64 - (bitLength(magnitude) - bitLength(value.denominator));
  const shifted =
    shift >= 0
      ? (magnitude << BigInt(shift)) / value.denominator
      : magnitude / (value.denominator << BigInt(-shift));
  const result = Number(shifted) * 2 ** -shift;
  return value.numerator < 0n ? -result : result;
}
