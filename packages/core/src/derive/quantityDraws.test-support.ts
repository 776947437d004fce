import fc from "fast-check";
import type { OutlineVertex } from "../read/FieldValue.ts";
import { fields } from "../read/fieldCatalog.ts";
import { readOutline } from "../read/readOutline.ts";
import { parseDimension } from "../units/parseDimension.ts";
import type { Quantity, QuantityExample } from "./Quantity.ts";

export type Catalog = ReadonlyMap<string, Quantity>;
export type Numbers = Readonly<Record<string, number>>;

/** What one input of a quantity is: symbol, unit, and the range of a field. */
export interface InputSpec {
  readonly symbol: string;
  readonly unit: string;
  readonly range?: readonly [number, number];
  readonly counted: boolean;
}

/** The spec behind a numeric input path, or undefined where it is neither a number field nor a quantity. */
export function inputSpec(path: string, catalog: Catalog): InputSpec | undefined {
  const other = catalog.get(path);
  if (other !== undefined) return { symbol: other.symbol, unit: other.unit, counted: false };
  const spec = fields.get(path)?.spec;
  if (spec?.kind === "count")
    return { symbol: spec.symbol, unit: "1", range: [spec.least, spec.most], counted: true };
  if (spec?.kind !== "dimension") return undefined;
  const [low, high] = spec.range.map((edge) => parseDimension(edge, { unit: spec.unit }).nominal);
  return { symbol: spec.symbol, unit: spec.unit, range: [low!, high!], counted: false };
}

/** An outline as examples write it: `33 mm towards cap, 14 mm; …`. */
function outlineOf(text: string): readonly OutlineVertex[] {
  return text.split(";").map((vertex) => {
    const [along = "", across = ""] = vertex.split(",").map((part) => part.trim());
    return readOutline({ along, across });
  });
}

/** Everything that an example gives, read. @throws Error when something is missing, unknown, or not of its kind. */
export function givenOf(quantity: Quantity, { given }: QuantityExample, catalog: Catalog) {
  const groups = [quantity.inputs, quantity.choices, quantity.outlines];
  const wanted = groups.flatMap((group) => Object.keys(group)).sort();
  if (Object.keys(given).sort().join() !== wanted.join())
    throw new Error(`gives other names than ${wanted.join()}`);
  const read = <T>(group: Readonly<Record<string, string>>, one: (text: string, path: string) => T) =>
    Object.fromEntries(Object.entries(group).map(([name, path]) => [name, one(given[name]!, path)]));
  return {
    numbers: read(
      quantity.inputs,
      (text, path) => parseDimension(text, { unit: inputSpec(path, catalog)!.unit }).nominal,
    ),
    words: read(quantity.choices, (text) => text),
    outlines: read(quantity.outlines, outlineOf),
  };
}

const STEPS = 1_000_003;

/** Draws of one input: over the whole range of a field, or 30 % about the examples of another quantity. */
function drawsOf(spec: InputSpec, examples: readonly number[]): fc.Arbitrary<number> {
  if (spec.counted) return fc.integer({ min: spec.range![0], max: spec.range![1] });
  const margin = 0.3 * Math.max(...examples.map(Math.abs));
  const [min, max] = spec.range ?? [Math.min(...examples) - margin, Math.max(...examples) + margin];
  // Evenly spread: what lies at the very edge of a double is not met in an engine.
  return fc.noBias(fc.integer({ min: 0, max: STEPS })).map((step) => min + ((max - min) * step) / STEPS);
}

/** Random inputs of a quantity, the same in every run. */
export function draws(quantity: Quantity, catalog: Catalog, count: number): readonly Numbers[] {
  const given = quantity.examples.map((example) => givenOf(quantity, example, catalog).numbers);
  const record = Object.fromEntries(
    Object.entries(quantity.inputs).map(([name, path]) => [
      name,
      drawsOf(
        inputSpec(path, catalog)!,
        given.map((numbers) => numbers[name]!),
      ),
    ]),
  );
  return fc.sample(fc.record(record), { numRuns: count, seed: 20 }) as Numbers[];
}

/** The result, or undefined where the inputs cannot be. */
export function computeOr(
  quantity: Quantity,
  numbers: Numbers,
  words: Readonly<Record<string, string>> = {},
): number | undefined {
  try {
    const result = quantity.compute(numbers, words, {});
    return Number.isFinite(result) ? result : undefined;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
