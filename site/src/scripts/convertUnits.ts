import { DimensionError, formatNumber, parseDimension, unitOf, unitsLike } from "trialfit";

/** A size in every unit of its kind, or what is wrong with the text. */
export type Converted =
  | { readonly rows: readonly { readonly unit: string; readonly text: string }[] }
  | { readonly problem: string };

/** Reads a size as a build file does and writes it in every unit of the kind. @param unit a unit of the kind */
export function convertUnits(text: string, unit: string): Converted {
  try {
    const { nominal, minus, plus } = parseDimension(text, { unit });
    const rows = unitsLike(unitOf(unit)).map(({ symbol, name }) => {
      const print = (si: number) => formatNumber(si, symbol, { digits: 7 });
      const band =
        minus === undefined || plus === undefined
          ? ""
          : ` (${print(nominal - minus)} to ${print(nominal + plus)})`;
      return { unit: name, text: `${print(nominal)}${band}` };
    });
    return { rows };
  } catch (error) {
    if (!(error instanceof DimensionError)) throw error;
    return { problem: `Found ${error.message}; expected ${error.expected}.` };
  }
}
