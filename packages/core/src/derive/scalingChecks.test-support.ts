import type { TableRow } from "../read/FieldValue.ts";
import { fields } from "../read/fieldCatalog.ts";
import { unitOf } from "../units/findUnit.ts";
import { isClosed } from "./formulaChecks.test-support.ts";
import type { Quantity } from "./Quantity.ts";
import { type Findings, over } from "./quantityCatalog.test-support.ts";
import {
  type Catalog,
  computeOr,
  draws,
  givenOf,
  inputSpec,
  type Numbers,
} from "./quantityDraws.test-support.ts";
import { type Base, bases, type Departure } from "./scalingDepartures.test-support.ts";

/** Changes of a unit: small, so that ranges within which a formula holds are kept, one up and one down. */
const CHANGES = [1.02, 0.97];
/** Of a power; searches close in on their result to about a hundred-thousandth. */
const ROUNDING = 1e-4;
/** Draws beside the examples, where an example gives nothing to scale, such as a force that vanishes. */
const DRAWS = 4;

const powerIn = (unit: string, base: number) => unitOf(unit).dimensions[base]!;

/** Values of a quantity's inputs, as if the unit of one base quantity had changed. */
function changed(one: Quantity, catalog: Catalog, { numbers, tables }: Given, base: number, change: number) {
  const scaled = (value: number, unit: string) => value * change ** powerIn(unit, base);
  const rowOf = (path: string) => (row: TableRow) => {
    const spec = fields.get(path)!.spec;
    if (spec.kind !== "table") throw new Error(`${path} is no table`);
    return Object.fromEntries(
      Object.entries(row).map(([name, cell]) => {
        const column = spec.columns[name]!;
        const isScaled = typeof cell === "number" && column.kind === "dimension";
        return [name, isScaled ? scaled(cell, column.unit) : cell];
      }),
    );
  };
  return {
    numbers: Object.fromEntries(
      Object.entries(numbers).map(([name, value]) => [
        name,
        scaled(value, inputSpec(one.inputs[name]!, catalog)!.unit),
      ]),
    ),
    tables: Object.fromEntries(
      Object.entries(tables).map(([name, rows]) => [name, rows.map(rowOf(one.tables[name]!))]),
    ),
  };
}

type Given = ReturnType<typeof givenOf>;

/** The powers that the result has too many, for both changes of each base; undefined where it is nothing to scale. */
function excessOf(one: Quantity, catalog: Catalog, given: Given): readonly (readonly number[])[] | undefined {
  const compute = ({ numbers, tables }: Pick<Given, "numbers" | "tables">) =>
    computeOr(one, numbers, { ...given, tables });
  const result = compute(given);
  const shown = Number(`1e-${one.decimals}`) * scaleOf(one.unit);
  // What is shown as nothing is the remainder of a sum that vanishes.
  if (result === undefined || Math.abs(result) < shown / 2) return undefined;
  const powers = bases.map((_, base) =>
    CHANGES.map((change) => {
      const scaled = compute(changed(one, catalog, given, base, change));
      if (scaled === undefined) return Number.NaN;
      return Math.log(scaled / result) / Math.log(change) - powerIn(one.unit, base);
    }),
  );
  return powers;
}

const scaleOf = (unit: string) => {
  const { factor, pi } = unitOf(unit);
  return (Number(factor.numerator) / Number(factor.denominator)) * (pi === 1 ? Math.PI : 1);
};

/** What is wrong with the powers of one set of inputs, or undefined. */
function faultOf(excess: readonly (readonly number[])[], departure?: Departure): string | undefined {
  const { constant = [0, 0, 0, 0], within = ROUNDING, except = [] } = departure ?? {};
  const told = bases.flatMap((base: Base, index) =>
    except.includes(base) ? [] : excess[index]!.map((power) => ({ base, power, whole: -constant[index]! })),
  );
  const off = told.find(({ power, whole }) => !(Math.abs(power - whole) <= within));
  return off && `${off.power.toFixed(4)} powers of ${off.base} too many`;
}

/**
 * The results of quantities without a formula follow a change of the units of length, mass, time and temperature as
 * their own unit says; those that keep numbers with a unit do so up to what the table of departures names.
 */
export function checkScaling(catalog: Catalog, departures: Readonly<Record<string, Departure>>): Findings {
  const found = over(catalog, (one, fault) => {
    if (isClosed(one)) return 0;
    const examples = one.examples.map((example) => givenOf(one, example, catalog));
    const others = examples[0]!;
    const drawn = () => draws(one, catalog, DRAWS).map((numbers: Numbers) => ({ ...others, numbers }));
    const excesses = (all: readonly Given[]) =>
      all.flatMap((given) => {
        const excess = excessOf(one, catalog, given);
        return excess === undefined ? [] : [excess];
      });
    const ofExamples = excesses(examples);
    const all = ofExamples.length > 0 ? ofExamples : excesses(drawn());
    if (all.length === 0) fault("no example gives anything to scale");
    const departure = departures[one.id];
    for (const excess of all) {
      const text = faultOf(excess, departure);
      if (text !== undefined) fault(text);
    }
    if (departure !== undefined && all.every((excess) => faultOf(excess) === undefined))
      fault("scales by itself, so its departure is stale");
    return all.length > 0 ? 1 : 0;
  });
  const stale = Object.keys(departures).filter((id) => !catalog.has(id) || isClosed(catalog.get(id)!));
  return {
    ...found,
    faults: [...found.faults, ...stale.map((id) => `${id}: no quantity without a formula`)],
  };
}
