import { findUnit, unitOf } from "./findUnit.ts";
import { type DimensionSyntax, parseDimension } from "./parseDimension.ts";

/** A written dimension in the pieces that a form shows, each as it is written. */
export interface DimensionPieces {
  /** `88.50`, `7/16`, `1 7/16`. */
  readonly number: string;
  /** Symbol of the unit; `1` for a plain number. */
  readonly unit: string;
  /** What stands after the unit: `0.01`, `2 %`, or a lopsided one with its signs, `+0.001/-0`. Empty: none. */
  readonly tolerance: string;
  /** The word that says which way or where. Empty: none. */
  readonly word: string;
}

const PIECES =
  /^([+-]?(?:\d+ \d+\/\d+|\d+\/\d+|(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?))([^±+]*)(?:±(.*)|(\+.*))?$/i;

/** Puts the pieces of a dimension together as `parseDimension` reads them. */
export function joinDimension({ number, unit, tolerance, word }: DimensionPieces): string {
  const width = tolerance.trim();
  return [
    number.trim(),
    unit === "1" ? "" : unit,
    word,
    width === "" || width.startsWith("+") ? width : `± ${width}`,
  ]
    .filter((piece) => piece !== "")
    .join(" ");
}

/**
 * Takes a written dimension apart for a form.
 * @returns undefined when it cannot be read, or when the pieces put together would not say exactly the same: then the
 * form must show the text
 */
export function splitDimension(text: string, syntax: DimensionSyntax): DimensionPieces | undefined {
  try {
    const whole = parseDimension(text, { ...syntax, wordRequired: false });
    const word = whole.word ?? "";
    const bare =
      word === "" ? text : text.replace(new RegExp(`\\s${word.replace(/\s+/g, "\\s+")}(?=\\s|$)`, "i"), "");
    const found = PIECES.exec(bare.trim());
    if (found === null) return undefined;
    const [, number = "", spelling = "", width, lopsided] = found;
    const unit = spelling.trim() === "" ? unitOf("1") : findUnit(spelling.trim());
    if (unit === undefined) return undefined;
    const pieces = { number, unit: unit.symbol, tolerance: (width ?? lopsided ?? "").trim(), word };
    const again = parseDimension(joinDimension(pieces), { ...syntax, wordRequired: false });
    const same =
      again.nominal === whole.nominal &&
      again.minus === whole.minus &&
      again.plus === whole.plus &&
      again.word === whole.word &&
      again.unit.symbol === whole.unit.symbol;
    return same ? pieces : undefined;
  } catch {
    return undefined;
  }
}
