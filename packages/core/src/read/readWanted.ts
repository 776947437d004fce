import { formatNumber } from "../units/formatNumber.ts";
import { DimensionError, type DimensionSyntax, parseDimension } from "../units/parseDimension.ts";
import type { DimensionSpec } from "./FieldSpec.ts";
import { exampleStep, orderStep } from "./orderStep.ts";
import { syntaxOf } from "./syntaxOf.ts";
import type { WantedValue } from "./WantedValue.ts";

const FORM = /^\?(?:\s*(.+?)\s+to\s+(.+?))?(?:\s*,?\s*in steps of\s+(.+?))?\s*$/;

function example({ range: [least, most], places = [], ...spec }: DimensionSpec): string {
  const place = places.length === 0 ? "" : ` ${places[0]}`;
  const bounds = `"? ${least}${place} to ${most}${place} in steps of ${exampleStep({ range: [least, most], ...spec })}"`;
  return places.length > 1
    ? `bounds with where they are meant: ${bounds}`
    : `"?", or with bounds and a step: ${bounds}`;
}

/** A size and its unit, its sign by its word. */
function readBound(text: string, spec: DimensionSpec, syntax: DimensionSyntax) {
  const { nominal, minus, word, unit } = parseDimension(text, { ...syntax, wordRequired: false });
  if (minus !== undefined) throw new DimensionError(`a tolerance on a bound: "${text}"`, example(spec));
  const sign = word === undefined ? 1 : (spec.signs?.[word] ?? 1);
  return { size: sign * nominal, written: nominal, unit, word };
}

type Bound = ReturnType<typeof readBound>;

/** Bounds are written from the smaller to the greater; which of two sides is the smaller nobody has to know. */
function refuseReversed(text: string, spec: DimensionSpec, first?: Bound, second?: Bound): void {
  if (first === undefined || second === undefined || first.written <= second.written) return;
  if (spec.signs !== undefined && first.word !== second.word) return;
  throw new DimensionError(
    `bounds the wrong way round: ${text.trim()}`,
    `the smaller bound first, such as ${example(spec).replace(/^.*: /, "")}`,
  );
}

/** Half of the width within which parts of this field are usually kept [SI]; 0 where it goes with the size. */
function usuallyKept({ tolerance, unit }: DimensionSpec): number {
  if (tolerance === undefined || (tolerance.includes("%") && unit !== "%")) return 0;
  return parseDimension(`0 ${unit === "1" ? "" : unit} ± ${tolerance}`, { unit }).plus ?? 0;
}

function stepOf(text: string | undefined, spec: DimensionSpec, unit: string): number {
  if (text === undefined) return orderStep(spec, unit, usuallyKept(spec)).si;
  const { nominal } = parseDimension(text, { unit: spec.unit });
  if (nominal > 0) return nominal;
  throw new DimensionError(`a step of ${text}`, "a step greater than zero");
}

/** Whether what stands for a dimension says that it is to be found. */
export const isWanted = (text: string): boolean => text.trimStart().startsWith("?");

/** Where it is meant: one word, at either bound or both; of several words none is taken for granted. */
function placeOf(words: readonly (string | undefined)[], spec: DimensionSpec): string | undefined {
  const { places = [] } = spec;
  if (places.length === 0) return undefined;
  const [first, other] = new Set(words.filter((word) => word !== undefined));
  if (other !== undefined)
    throw new DimensionError("bounds that do not say the same of where they are meant", example(spec));
  if (first === undefined && places.length > 1)
    throw new DimensionError("nothing that says where it is meant", example(spec));
  return first ?? places[0];
}

/**
 * Reads `?`, `? 28 mm to 34 mm`, `? 28 mm to 34 mm in steps of 0.05 mm`. Without bounds the field's own range is taken.
 * Steps count from the first bound where bounds and a step are stated, otherwise from zero.
 * @throws DimensionError with what was found and what was expected
 */
export function readWanted(text: string, spec: DimensionSpec): WantedValue {
  const found = FORM.exec(text.trim());
  if (found === null) throw new DimensionError("not a way to say what is to be found", example(spec));
  const [, from, to, step] = found;
  const syntax = syntaxOf(spec);
  const [least, most] = spec.range.map((edge) => parseDimension(edge, { unit: spec.unit }).nominal) as [
    number,
    number,
  ];
  const first = from === undefined ? undefined : readBound(from, spec, syntax);
  const second = to === undefined ? undefined : readBound(to, spec, syntax);
  refuseReversed(text, spec, first, second);
  const ends = [first?.size ?? least, second?.size ?? most];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  if (low < least || high > most)
    throw new DimensionError(
      `bounds ${text.trim()}, outside what this dimension can be`,
      `between ${formatNumber(least, spec.unit)} and ${formatNumber(most, spec.unit)}`,
    );
  if (low === high) throw new DimensionError("bounds without room between them", example(spec));
  const unit = first?.unit.symbol ?? spec.unit;
  const place = placeOf([first?.word, second?.word], spec);
  return {
    kind: "wanted",
    ...(place === undefined ? {} : { place }),
    low,
    high,
    step: stepOf(step, spec, unit),
    ...(step === undefined || first === undefined ? {} : { origin: first.size }),
    unit,
    text: text.trim(),
  };
}
