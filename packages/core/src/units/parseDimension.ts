import { intervalToSi, toSi } from "./convert.ts";
import { findUnit, sameDimensions, unitOf, unitsLike } from "./findUnit.ts";
import { parseMagnitude } from "./parseMagnitude.ts";
import type { Rational } from "./Rational.ts";
import { multiply, rational } from "./Rational.ts";
import type { Unit } from "./unitTable.ts";

/** What a text dimension says, in SI. */
export interface ParsedDimension {
  readonly nominal: number;
  /** Distance from nominal down to the lowest value (≥ 0), or undefined when the text has no tolerance. */
  readonly minus: number | undefined;
  readonly plus: number | undefined;
  readonly unit: Unit;
  /** The word that says which way or where: `dish`, `below`, `at crank`. */
  readonly word: string | undefined;
}

export interface DimensionSyntax {
  /** Symbol of a unit of the right kind. */
  readonly unit: string;
  /** Words that the text may (or must) carry. */
  readonly words?: readonly string[];
  readonly wordRequired?: boolean;
}

/** A text that is not a dimension of the wanted kind: what was expected instead. */
export class DimensionError extends Error {
  readonly expected: string;
  /** Where in the longer form of a field it stands. */
  readonly path: readonly string[];
  /** What is wrong: the unit, that there is none, or anything else. */
  readonly flaw: "wrong-unit" | "no-unit" | "other";
  constructor(
    message: string,
    expected: string,
    path: readonly string[] = [],
    flaw: DimensionError["flaw"] = "other",
  ) {
    super(message);
    this.name = "DimensionError";
    this.expected = expected;
    this.path = path;
    this.flaw = flaw;
  }
}

const PLUS_MINUS = /^\s*(?:±|\+\s*\/\s*-|\+-)\s*/;

/** How a dimension of this syntax is written, for "expected" in errors. */
export function describeSyntax(syntax: DimensionSyntax): string {
  const unit = unitOf(syntax.unit);
  if (unit.symbol === "1") return "a number such as 9.6 or 9.6 ± 0.1";
  const units = unitsLike(unit).map((other) => other.symbol);
  const words =
    syntax.words === undefined ? "" : `, with ${syntax.words.map((word) => `"${word}"`).join(" or ")}`;
  return `a number with its unit (${units.join(", ")})${words}`;
}

function takeWord(text: string, words: readonly string[]): { word: string | undefined; rest: string } {
  for (const word of [...words].sort((a, b) => b.length - a.length)) {
    const pattern = new RegExp(`(^|\\s)${word.replace(/\s+/g, "\\s+")}(?=\\s|$|[±+])`, "i");
    if (pattern.test(text)) return { word, rest: text.replace(pattern, "$1").trim() };
  }
  return { word: undefined, rest: text };
}

function takeUnit(text: string, wanted: Unit, syntax: DimensionSyntax): { unit: Unit; rest: string } {
  const spelling = /^\s*([^±+]*?)\s*(?=[±+]|$)/.exec(text)?.[1] ?? "";
  const rest = text.slice(text.indexOf(spelling) + spelling.length);
  if (spelling === "" || (wanted.symbol === "1" && /^:\s*1$/.test(spelling))) {
    if (wanted.symbol === "1") return { unit: wanted, rest };
    const late = /[±+].*\d\s*[A-Za-z]/.test(rest) ? ": it stands after the number, before the tolerance" : "";
    throw new DimensionError(`a number without a unit${late}`, describeSyntax(syntax), [], "no-unit");
  }
  const unit = findUnit(spelling);
  if (unit === undefined) {
    const near = unitsLike(wanted).find((other) =>
      [other.symbol, ...other.aliases].some((known) => known.toLowerCase() === spelling.toLowerCase()),
    );
    const hint =
      near !== undefined
        ? ` (${near.symbol} is written so)`
        : /tpi/i.test(spelling)
          ? " (write the pitch: 1/20 in for 20 threads per inch)"
          : "";
    throw new DimensionError(
      `an unknown unit or word "${spelling}"${hint}`,
      describeSyntax(syntax),
      [],
      "wrong-unit",
    );
  }
  if (!sameDimensions(unit.dimensions, wanted.dimensions)) {
    throw new DimensionError(
      `a ${unit.name}, which measures something else`,
      describeSyntax(syntax),
      [],
      "wrong-unit",
    );
  }
  return { unit, rest };
}

function takeTolerance(
  text: string,
  nominal: Rational,
  unit: Unit,
  syntax: DimensionSyntax,
): { minus: number; plus: number } | undefined {
  const rest = text.trim();
  if (rest === "") return undefined;
  const fail = (what: string) =>
    new DimensionError(what, "a tolerance such as ± 0.01, ± 0.01 mm, ± 2 % or +0.001/-0");
  const width = (part: string): { size: number; rest: string } => {
    const magnitude = parseMagnitude(part.trim());
    if (magnitude === undefined) throw fail(`a tolerance that is not a number: "${part.trim()}"`);
    if (magnitude.value.numerator < 0n) throw fail(`a tolerance with a sign of its own: "${part.trim()}"`);
    const spelling = /^\s*([^/±+-]*)/.exec(magnitude.rest)?.[1]?.trim() ?? "";
    const after = magnitude.rest.replace(/^\s*[^/±+-]*/, "");
    if (spelling === "%" && unit.symbol !== "%") {
      const share = multiply(multiply(magnitude.value, rational(1n, 100n)), nominal);
      return { size: Math.abs(intervalToSi(share, unit)), rest: after };
    }
    const own = spelling === "" ? unit : takeUnit(spelling, unit, syntax).unit;
    return { size: intervalToSi(magnitude.value, own), rest: after };
  };
  const symmetric = PLUS_MINUS.exec(rest);
  if (symmetric !== null) {
    const { size, rest: tail } = width(rest.slice(symmetric[0].length));
    if (tail.trim() !== "") throw fail(`"${tail.trim()}" after the tolerance`);
    return { minus: size, plus: size };
  }
  if (rest.startsWith("+")) {
    const up = width(rest.slice(1));
    const down = /^\s*\/?\s*-\s*(.+)$/.exec(up.rest);
    if (down === null) throw fail(`an upper tolerance without its lower one: "${rest}"`);
    const low = width(down[1] ?? "");
    if (low.rest.trim() !== "") throw fail(`"${low.rest.trim()}" after the tolerance`);
    return { plus: up.size, minus: low.size };
  }
  throw fail(`"${rest}" where a tolerance may stand`);
}

/**
 * Reads a dimension as people write it: `88.50 mm ± 0.01`, `3.484 in +0.001/-0`, `7/16 in`,
 * `11.5 cm3 dish ± 0.3`. The unit is never guessed; only a plain ratio may stand without one.
 * @throws DimensionError saying what was found and what was expected.
 */
export function parseDimension(text: string, syntax: DimensionSyntax): ParsedDimension {
  const wanted = unitOf(syntax.unit);
  const { word, rest: bare } = takeWord(text.trim(), syntax.words ?? []);
  const magnitude = parseMagnitude(bare);
  if (magnitude === undefined) {
    const comma = /^[+-]?\d+,\d/.test(bare) ? " (write the decimal sign as a point)" : "";
    throw new DimensionError(`no number at its head${comma}`, describeSyntax(syntax));
  }
  const { unit, rest } = takeUnit(magnitude.rest, wanted, syntax);
  const tolerance = takeTolerance(rest, magnitude.value, unit, syntax);
  if (syntax.wordRequired === true && word === undefined) {
    const words = (syntax.words ?? []).map((option) => `"${option}"`).join(" or ");
    throw new DimensionError(
      `no word that says ${words}`,
      `${describeSyntax(syntax)}: the word is not optional here`,
    );
  }
  return {
    nominal: toSi(magnitude.value, unit),
    minus: tolerance?.minus,
    plus: tolerance?.plus,
    unit,
    word,
  };
}
