import { add, negate, type Rational, rational, rationalFromDecimal } from "./Rational.ts";

/** A number at the head of a text, and what is left of the text after it. */
export interface Magnitude {
  readonly value: Rational;
  readonly rest: string;
}

const MIXED = /^([+-]?)\s*(\d+)\s+(\d+)\s*\/\s*(\d+)(?![\d.])/;
const FRACTION = /^([+-]?)\s*(\d+)\s*\/\s*(\d+)(?![\d.])/;
const DECIMAL = /^[+-]?\s*(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d{1,2})?(?![\d.])/;

/**
 * Reads `88.50`, `7/16`, `1 7/16` or `12e-6` from the head of a text, exactly.
 * @returns undefined when the text does not begin with such a number; a decimal comma is not a number.
 */
export function parseMagnitude(text: string): Magnitude | undefined {
  const mixed = MIXED.exec(text);
  if (mixed !== null) {
    const [all, sign, whole = "0", top = "0", bottom = "0"] = mixed;
    if (BigInt(bottom) === 0n) return undefined;
    const value = add(rational(BigInt(whole)), rational(BigInt(top), BigInt(bottom)));
    return { value: sign === "-" ? negate(value) : value, rest: text.slice(all.length) };
  }
  const fraction = FRACTION.exec(text);
  if (fraction !== null) {
    const [all, sign, top = "0", bottom = "0"] = fraction;
    if (BigInt(bottom) === 0n) return undefined;
    const value = rational(BigInt(top), BigInt(bottom));
    return { value: sign === "-" ? negate(value) : value, rest: text.slice(all.length) };
  }
  const decimal = DECIMAL.exec(text);
  if (decimal === null || text[decimal[0].length] === ",") return undefined;
  const value = rationalFromDecimal(decimal[0].replace(/\s/g, ""));
  return value === undefined ? undefined : { value, rest: text.slice(decimal[0].length) };
}
