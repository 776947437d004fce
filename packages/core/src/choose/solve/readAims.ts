import type { Quantity } from "../../derive/Quantity.ts";
import type { Build } from "../../read/Build.ts";
import { nearestNames } from "../../read/nearestNames.ts";
import { InputError, type Problem } from "../../read/Problem.ts";
import type { WrittenAim } from "../../read/WantedValue.ts";
import { intervalToSi } from "../../units/convert.ts";
import { unitOf } from "../../units/findUnit.ts";
import {
  DimensionError,
  describeSyntax,
  type ParsedDimension,
  parseDimension,
} from "../../units/parseDimension.ts";
import { rational } from "../../units/Rational.ts";
import type { Aim, AimKind } from "./Wanted.ts";

const bounds: Readonly<Record<string, AimKind>> = { "at least": "least", "at most": "most" };

/** Half of the last digit in which a quantity is printed [SI]. */
function halfDigit({ unit, decimals }: Quantity): number {
  return intervalToSi(rational(1n, 2n * 10n ** BigInt(decimals)), unitOf(unit));
}

/** Share of half a digit that is an error of computing: what is a size but for it is that size. */
const NOISE = 1e-3;
/** Share of half a digit that a bound has to work with; what is wanted is moved inwards by it, so that the bound stays. */
const BOUND = 0.02;

/** `at least` or `at most` a value. It is kept to what it says: a limit of a class is none otherwise. */
function boundOf(quantity: Quantity, kind: AimKind, { nominal, plus, minus }: ParsedDimension): Aim {
  const inward = kind === "least" ? 1 : -1;
  const beyond = (kind === "least" ? minus : plus) ?? 0;
  const noise = NOISE * halfDigit(quantity);
  if (beyond > 0) return { id: quantity.id, kind, value: nominal, allowance: beyond + noise, stated: true };
  const allowance = BOUND * halfDigit(quantity);
  const value = nominal + inward * (allowance - noise);
  return { id: quantity.id, kind, value, allowance, stated: false };
}

/** Between two values; both ends belong to it. */
function rangeOf(quantity: Quantity, low: number, high: number): Aim {
  const half = (high - low) / 2;
  const allowance = half + NOISE * halfDigit(quantity);
  return { id: quantity.id, kind: "equal", value: low + half, allowance, stated: true, isRange: true };
}

function readAim(quantity: Quantity, text: string): Aim {
  const { id, unit } = quantity;
  const syntax = { unit };
  const word = Object.keys(bounds).find((one) => text.trim().toLowerCase().startsWith(one));
  const kind = word === undefined ? "equal" : bounds[word]!;
  const rest = word === undefined ? text : text.trim().slice(word.length);
  const [low, high] = rest.split(/\s+to\s+/).map((part) => parseDimension(part, syntax));
  if (low === undefined) throw new DimensionError("nothing", describeSyntax(syntax));
  if (high !== undefined) {
    if (kind !== "equal" || !(high.nominal > low.nominal))
      throw new DimensionError(text, "a smaller value to a greater one");
    return rangeOf(quantity, low.nominal, high.nominal);
  }
  if (kind !== "equal") return boundOf(quantity, kind, low);
  const { nominal: value, plus = 0, minus = 0 } = low;
  if (Math.abs(plus - minus) > NOISE * halfDigit(quantity))
    return rangeOf(quantity, value - minus, value + plus);
  const half = halfDigit(quantity);
  return plus > 0
    ? { id, kind, value, allowance: plus + NOISE * half, stated: true }
    : { id, kind, value, allowance: half, stated: false };
}

function problemOf(
  id: string,
  { text, line, column }: WrittenAim,
  file: string,
  found: string,
  expected: string,
): Problem {
  return { file, line, column, field: `aims.${id}`, found: `"${text}": ${found}`, expected };
}

/** An aim that no quantity has the name of, with those that may have been meant. */
function unknownAim(
  id: string,
  written: WrittenAim,
  file: string,
  catalog: ReadonlyMap<string, Quantity>,
): Problem {
  const [near, ...others] = nearestNames(id, [...catalog.values()]);
  const also = others.map((one) => `${one} (${catalog.get(one)!.name.toLowerCase()})`).join(" or ");
  const expected = `the id of a quantity${also === "" ? "" : `, perhaps ${also}`}; \`trialfit explain\` with a word lists those that have it`;
  return {
    ...problemOf(id, written, file, `no quantity is called ${id}`, expected),
    ...(near === undefined ? {} : { didYouMean: near }),
  };
}

/**
 * Reads what a build is to reach.
 * @throws InputError with every aim that is not a quantity, or not a value or bound of it
 */
export function readAims(build: Build, catalog: ReadonlyMap<string, Quantity>): readonly Aim[] {
  const file = build.file ?? "build";
  const problems: Problem[] = [];
  const aims: Aim[] = [];
  for (const [id, written] of build.aims) {
    const quantity = catalog.get(id);
    if (quantity === undefined) {
      problems.push(unknownAim(id, written, file, catalog));
      continue;
    }
    try {
      aims.push(readAim(quantity, written.text));
    } catch (error) {
      if (!(error instanceof DimensionError)) throw error;
      const expected = `${describeSyntax({ unit: quantity.unit })}, a smaller one to a greater one, or one after "at least" or "at most"`;
      problems.push(problemOf(id, written, file, error.message, expected));
    }
  }
  if (problems.length > 0) throw new InputError(problems);
  return aims;
}
