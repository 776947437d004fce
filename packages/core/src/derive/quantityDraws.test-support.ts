import fc from "fast-check";
import type { TableRow } from "../read/FieldValue.ts";
import { fields } from "../read/fieldCatalog.ts";
import { readDimension } from "../read/readDimension.ts";
import { parseDimension } from "../units/parseDimension.ts";
import type { Quantity, QuantityExample } from "./Quantity.ts";
import { routeAt, type TakenRoute } from "./routeOf.ts";

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

/** A table as examples write it, rows by semicolon and cells by comma: `33 mm towards cap, 14 mm; …`. */
function tableOf(text: string, path: string): readonly TableRow[] {
  const spec = fields.get(path)?.spec;
  if (spec?.kind !== "table") throw new Error(`${path} is no table`);
  const columns = Object.entries(spec.columns);
  return text.split(";").map((row) =>
    Object.fromEntries(
      row.split(",").map((cell, index) => {
        const [name, column] = columns[index]!;
        const value =
          column.kind === "dimension"
            ? readDimension(cell.trim(), column, "data-sheet").value.nominal
            : cell.trim();
        return [name, column.kind === "count" ? Number(value) : value];
      }),
    ),
  );
}

/** Everything that an example gives, read. @throws Error when something is missing, unknown, or not of its kind. */
export function givenOf(quantity: Quantity, { given }: QuantityExample, catalog: Catalog) {
  const ways = quantity.routes.length === 0 ? [0] : quantity.routes.keys();
  const names = Object.keys(given).sort().join();
  const routes = [...ways].map((index) => routeAt(quantity, index));
  const wantedBy = ({ inputs, choices, tables }: TakenRoute) =>
    [inputs, choices, tables]
      .flatMap((group) => Object.keys(group))
      .sort()
      .join();
  const route = routes.find((one) => wantedBy(one) === names);
  if (route === undefined) throw new Error(`gives other names than ${routes.map(wantedBy).join(" or ")}`);
  const read = <T>(group: Readonly<Record<string, string>>, one: (text: string, path: string) => T) =>
    Object.fromEntries(Object.entries(group).map(([name, path]) => [name, one(given[name]!, path)]));
  return {
    numbers: read(
      route.inputs,
      (text, path) => parseDimension(text, { unit: inputSpec(path, catalog)!.unit }).nominal,
    ),
    words: read(route.choices, (text) => text),
    tables: read(route.tables, tableOf),
    route: route.index,
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

/** Random inputs of a quantity, or of one way to it, the same in every run. */
export function draws(
  quantity: Quantity,
  catalog: Catalog,
  count: number,
  inputs: Readonly<Record<string, string>> = quantity.inputs,
): readonly Numbers[] {
  const given = quantity.examples.map((example) => givenOf(quantity, example, catalog).numbers);
  const record = Object.fromEntries(
    Object.entries(inputs).map(([name, path]) => [
      name,
      drawsOf(
        inputSpec(path, catalog)!,
        given.flatMap((numbers) => numbers[name] ?? []),
      ),
    ]),
  );
  return fc.sample(fc.record(record), { numRuns: count, seed: 20 }) as Numbers[];
}

/** What a quantity takes beside numbers. */
export type Others = Pick<ReturnType<typeof givenOf>, "words" | "tables" | "route">;

/** The result, or undefined where the inputs cannot be. */
export function computeOr(
  quantity: Quantity,
  numbers: Numbers,
  { words, tables, route }: Others = { words: {}, tables: {}, route: 0 },
): number | undefined {
  try {
    const result = quantity.compute(numbers, words, tables, route);
    return Number.isFinite(result) ? result : undefined;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
