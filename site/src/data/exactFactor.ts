import type { Unit } from "trialfit";

type Fraction = Unit["factor"];

/** How many decimals a fraction needs to be written out, or undefined when it never ends. */
function decimalsOf(denominator: bigint): number | undefined {
  let [rest, twos, fives] = [denominator, 0, 0];
  for (; rest % 2n === 0n; rest /= 2n) twos += 1;
  for (; rest % 5n === 0n; rest /= 5n) fives += 1;
  return rest === 1n ? Math.max(twos, fives) : undefined;
}

const ZEROS = /^0\.(0{6,})(\d+)$/;

/** A fraction exactly: as a decimal where it ends, else as a quotient. */
export function exactNumber({ numerator, denominator }: Fraction): string {
  const decimals = decimalsOf(denominator);
  if (decimals === undefined) return `${numerator}/${denominator}`;
  const digits = String((numerator * 10n ** BigInt(decimals)) / denominator).padStart(decimals + 1, "0");
  const text = decimals === 0 ? digits : `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
  const small = ZEROS.exec(text);
  if (small === null) return text;
  const [, zeros = "", rest = ""] = small;
  return `${rest.charAt(0)}${rest.length > 1 ? `.${rest.slice(1)}` : ""}e-${zeros.length + 1}`;
}

/** One of a unit in SI, exactly: `0.0254 m`, `π/30 rad/s`; with the zero mark of a temperature scale. */
export function exactFactor({ factor, pi, offset }: Unit, si: Unit): string {
  const size =
    pi === 0
      ? exactNumber(factor)
      : `${factor.numerator === 1n ? "" : factor.numerator}π${factor.denominator === 1n ? "" : `/${factor.denominator}`}`;
  const unit = si.symbol === "1" ? "" : ` ${si.symbol}`;
  const zero = offset.numerator === 0n ? "" : `; its zero is at ${exactNumber(offset)}${unit}`;
  return `${size}${unit}${zero}`;
}
