import { DimensionError, formatNumber, parseDimension } from "trialfit";

/** A text as somebody writes it, and what it is read as, or why it is refused. */
export interface Spelling {
  readonly text: string;
  /** What the field wanted. */
  readonly wanted: string;
  readonly said: string;
  readonly refused: boolean;
}

const tried: readonly (readonly [text: string, unit: string, words?: readonly string[]])[] = [
  ["88.50 mm ± 0.01", "mm"],
  ["3.484 in +0.001/-0", "mm"],
  ["7/16 in", "mm"],
  ["1 7/16 in", "mm"],
  ["4 thou", "mm"],
  ["2.5 µm", "um"],
  ["350 cc", "cm3"],
  ["11.5 cm3 dish ± 0.3", "cm3", ["dish", "dome"]],
  ["60 ft-lb ± 4 %", "N m"],
  ["7800 1/min", "rpm"],
  ["1.5e-5 m", "mm"],
  ["9.6:1", "1"],
  ["88.5", "mm"],
  ["88,5 mm", "mm"],
  ["88.5 MM", "mm"],
  ["88.5 furlong", "mm"],
  ["88.5 kg", "mm"],
  ["88.5 mm ± -0.1", "mm"],
  ["88.5 ± 0.1 mm", "mm"],
  ["88.5 mm +0.1", "mm"],
  ["20 tpi", "mm"],
  ["11.5 cm3", "cm3", ["dish", "dome"]],
];

function spell([text, unit, words]: (typeof tried)[number]): Spelling {
  try {
    const { nominal, minus, plus, word } = parseDimension(text, {
      unit,
      ...(words === undefined ? {} : { words, wordRequired: true }),
    });
    const print = (si: number) => formatNumber(si, unit, { digits: 6 });
    const band = minus === undefined ? "" : `, from ${print(nominal - minus)} to ${print(nominal + plus!)}`;
    return {
      text,
      wanted: unit,
      said: `${print(nominal)}${word === undefined ? "" : ` ${word}`}${band}`,
      refused: false,
    };
  } catch (error) {
    if (!(error instanceof DimensionError)) throw error;
    return { text, wanted: unit, said: `found ${error.message}; expected ${error.expected}`, refused: true };
  }
}

/** Spellings of numbers with what the reader says of each, in its own words. */
export const spellings: readonly Spelling[] = tried.map(spell);
