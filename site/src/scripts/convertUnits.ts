import { DimensionError, formatNumber, parseDimension, unitOf, unitsLike } from "trialfit";
import { prettyUnits } from "../data/prettyUnits.ts";

/** A size in every unit of its kind, or what is wrong with the text. */
export type Converted =
  | { readonly rows: readonly { readonly unit: string; readonly text: string }[] }
  | { readonly problem: string };

/** A scale that begins at its own zero mark measures from an absolute zero: nothing lies below it. */
const hasAbsoluteZero = (unit: string) =>
  unitsLike(unitOf(unit)).some(({ offset }) => offset.numerator !== 0n);

/** Reads a size as a build file does and writes it in every unit of the kind. @param unit a unit of the kind */
export function convertUnits(text: string, unit: string): Converted {
  try {
    const { nominal, minus, plus } = parseDimension(text, { unit });
    if (hasAbsoluteZero(unit) && nominal - (minus ?? 0) < 0)
      return {
        problem: `Found a temperature below absolute zero; expected at least ${unitsLike(unitOf(unit))
          .map(({ symbol }) => prettyUnits(formatNumber(0, symbol, { digits: 7 })))
          .join(", ")}.`,
      };
    const rows = unitsLike(unitOf(unit)).map(({ symbol, name }) => {
      const print = (si: number) => formatNumber(si, symbol, { digits: 7 });
      const band =
        minus === undefined || plus === undefined
          ? ""
          : ` (${print(nominal - minus)} to ${print(nominal + plus)})`;
      return { unit: name, text: prettyUnits(`${print(nominal)}${band}`) };
    });
    return { rows };
  } catch (error) {
    if (!(error instanceof DimensionError)) throw error;
    return { problem: `Found ${error.message}; expected ${error.expected}.` };
  }
}
