import type { Quantity } from "../../derive/Quantity.ts";
import type { Build } from "../../read/Build.ts";
import { nearestNames } from "../../read/nearestNames.ts";
import { InputError, type Problem } from "../../read/Problem.ts";
import type { WrittenAim } from "../../read/WantedValue.ts";
import { intervalToSi } from "../../units/convert.ts";
import { unitOf } from "../../units/findUnit.ts";
import { DimensionError, describeSyntax, parseDimension } from "../../units/parseDimension.ts";
import { rational } from "../../units/Rational.ts";
import type { Aim, AimKind } from "./Wanted.ts";

const bounds: Readonly<Record<string, AimKind>> = { "at least": "least", "at most": "most" };

/** Half of the last digit in which a quantity is printed [SI]. */
function halfDigit({ unit, decimals }: Quantity): number {
  return intervalToSi(rational(1n, 2n * 10n ** BigInt(decimals)), unitOf(unit));
}

function readAim(quantity: Quantity, text: string): Aim {
  const { id, unit } = quantity;
  const syntax = { unit };
  const word = Object.keys(bounds).find((one) => text.trim().toLowerCase().startsWith(one));
  const kind = word === undefined ? "equal" : bounds[word]!;
  const rest = word === undefined ? text : text.trim().slice(word.length);
  const [low, high] = rest.split(/\s+to\s+/).map((part) => parseDimension(part, syntax));
  if (low === undefined) throw new DimensionError("nothing", describeSyntax(syntax));
  if (high === undefined) {
    const { nominal: value, plus, minus } = low;
    const stated = plus === undefined ? 0 : Math.min(plus, minus ?? plus);
    return { id, kind, value, allowance: stated > 0 ? stated : halfDigit(quantity), stated: stated > 0 };
  }
  const half = (high.nominal - low.nominal) / 2;
  if (kind !== "equal" || !(half > 0)) throw new DimensionError(text, "a smaller value to a greater one");
  return { id, kind, value: low.nominal + half, allowance: half, stated: true, isRange: true };
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
