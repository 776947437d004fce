import { findUnit } from "../../units/findUnit.ts";
import { DimensionError } from "../../units/parseDimension.ts";
import { parseMagnitude } from "../../units/parseMagnitude.ts";

/**
 * The text of a cell with the unit that stands in the head of its column: `94 ± 0.02` under `stroke (mm)` is
 * `94 mm ± 0.02`.
 * @throws DimensionError when the cell does not begin with a number, or has a unit of its own: one of the two is a slip
 */
export function withUnit(text: string, unit: string): string {
  const magnitude = parseMagnitude(text.trim());
  if (magnitude === undefined && /^[+-]?\d+,\d/.test(text.trim()))
    throw new DimensionError("a decimal comma", `a decimal point, such as ${text.trim().replace(",", ".")}`);
  if (magnitude === undefined)
    throw new DimensionError(
      "no number at its head",
      `a number in ${unit}: the unit stands in the column's head`,
    );
  const { rest } = magnitude;
  const own = /^\s*([^\s±+-]+)/.exec(rest)?.[1];
  if (own !== undefined && own === unit)
    throw new DimensionError("the unit once more", `the number alone: ${unit} stands in the column's head`);
  if (own !== undefined && findUnit(own) !== undefined)
    throw new DimensionError(
      `the unit ${own}`,
      `the number alone, in ${unit} as the column's head says; or a head without a unit`,
    );
  return `${text.trim().slice(0, text.trim().length - rest.length)} ${unit}${/^\s/.test(rest) || rest === "" ? "" : " "}${rest}`;
}
