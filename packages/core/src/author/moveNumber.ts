import { quantities } from "../derive/generated/quantities.ts";
import { fields } from "../read/fieldCatalog.ts";
import { parseMagnitude } from "../units/parseMagnitude.ts";
import { toNumber } from "../units/Rational.ts";

/** Whether a fact only takes whole numbers: to move a limit on it by less changes nothing. */
function isWhole(fact: string): boolean {
  const quantity = quantities.get(fact);
  return quantity === undefined
    ? fields.get(fact)?.spec.kind === "count"
    : quantity.unit === "1" && quantity.decimals === 0;
}

function withNumber(number: number, rest: string): string {
  return `${Number(number.toPrecision(12))}${rest}`;
}

/** Zero has no digits to go by: one unit of the last decimal in which the fact is shown, or that is written. */
function aroundZero(fact: string, text: string, rest: string): readonly string[] {
  const quantity = quantities.get(fact);
  const unit = quantity === undefined || quantity.unit === "1" ? "" : ` ${quantity.unit}`;
  const written = /\.(\d+)/.exec(text.slice(0, text.length - rest.length))?.[1]?.length ?? 0;
  const step = 10 ** -(quantity?.decimals ?? written);
  const tail = quantity === undefined ? rest : unit;
  return [withNumber(-step, tail), withNumber(step, tail)];
}

/**
 * A number as written, moved down and up by one unit of its second significant digit, its unit kept: `0.60 mm`
 * gives `0.59 mm` and `0.61 mm`. What is counted moves by one at least.
 * @param fact what the number is compared with
 * @returns an empty list for a text that is no number
 */
export function moveNumber(text: string, fact: string): readonly string[] {
  const magnitude = parseMagnitude(text.trim());
  if (magnitude === undefined) return [];
  const value = toNumber(magnitude.value);
  if (value === 0) return aroundZero(fact, text.trim(), magnitude.rest);
  const digit = 10 ** (Math.floor(Math.log10(Math.abs(value)) + 1e-12) - 1);
  const step = isWhole(fact) ? Math.max(1, digit) : digit;
  return [withNumber(value - step, magnitude.rest), withNumber(value + step, magnitude.rest)];
}
