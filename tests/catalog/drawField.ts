import { type FieldValue, unitOf } from "trialfit";
import type { Random } from "../../packages/core/src/derive/seeded.ts";
import type {
  ColumnSpec,
  CountSpec,
  DimensionSpec,
  FieldSpec,
  TableSpec,
} from "../../packages/core/src/read/FieldSpec.ts";
import { pick } from "./cylinderLayouts.ts";
import { fieldText, intoRange, rangeOf } from "./fieldText.ts";
import type { Manner } from "./Manner.ts";
import { type UsualValue, usualValues } from "./usualValues.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** Powers of ten between which numbers are moved, relative to themselves: fits hang on the fourth digit. */
const [LEAST_MOVE, MOST_MOVE] = [-4.3, -0.5];
/** How far a number that is zero moves at the most, as part of its range. */
const ZERO_MOVE = 0.02;

/** Power of the size by which a value of this unit grows when an engine is built larger and turns slower for it. */
function growth(unit: string): number {
  const [length, mass, time] = unitOf(unit).dimensions;
  return length + 3 * mass + time;
}

function move(spec: DimensionSpec, value: number, random: Random): number {
  const by = (random() < 0.5 ? -1 : 1) * 10 ** (LEAST_MOVE + (MOST_MOVE - LEAST_MOVE) * random());
  const [least, most] = rangeOf(spec);
  return value === 0 ? by * ZERO_MOVE * (most - least) : value * (1 + by);
}

/** Share of the added numbers that are drawn from anywhere in their range, whatever is usual. */
const UNUSUAL = 0.2;

/** A number from anywhere in the range of its field, more often low in it. */
function anywhere(spec: DimensionSpec, random: Random): UsualValue {
  const [least, most] = rangeOf(spec);
  return { value: least + (most - least) * random() ** 2, place: spec.places?.[0] };
}

function givenBy(values: Values, path: string): UsualValue | undefined {
  const value = values.get(path);
  const place = values.get(`${path}.place`);
  return value?.kind === "dimension"
    ? { value: value.nominal, place: place?.kind === "choice" ? place.value : undefined }
    : undefined;
}

function drawDimension(path: string, spec: DimensionSpec, values: Values, manner: Manner, random: Random) {
  const given = givenBy(values, path);
  const usual = usualValues.get(path) ?? [];
  const replaced = given === undefined || random() < manner.replaced;
  const unusual = usual.length === 0 || (given === undefined && random() < UNUSUAL);
  const start = replaced
    ? unusual
      ? anywhere(spec, random)
      : pick(usual, random)
    : { ...given, value: given.value * manner.size ** growth(spec.unit) };
  const value = random() < manner.moved ? move(spec, start.value, random) : start.value;
  const place =
    spec.places !== undefined && random() < manner.reworded ? pick(spec.places, random) : start.place;
  return fieldText(spec, intoRange(spec, value), place);
}

function drawCount(path: string, spec: CountSpec, values: Values, manner: Manner, random: Random) {
  const given = givenBy(values, path);
  if (given !== undefined && random() >= manner.reworded) return String(given.value);
  const usual = usualValues.get(path) ?? [{ value: given?.value ?? spec.least, place: undefined }];
  const value = pick(usual, random).value + pick([-1, 0, 0, 1], random);
  return String(Math.min(spec.most, Math.max(spec.least, value)));
}

function cellText(spec: ColumnSpec, cell: number | string, size: number): string {
  return spec.kind === "dimension" && typeof cell === "number"
    ? fieldText(spec, intoRange(spec, cell * size ** growth(spec.unit)))
    : String(cell);
}

function sizedTable(path: string, { columns }: TableSpec, values: Values, { size }: Manner) {
  const table = values.get(path);
  if (table?.kind !== "table") return undefined;
  return table.rows.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([name, cell]) => [name, cellText(columns[name]!, cell, size)]),
    ),
  );
}

/**
 * One field of a new build as its file gives it, or undefined where it is left out.
 * @param values what the build gives that the new one is drawn from
 */
export function drawField(
  path: string,
  spec: FieldSpec,
  values: Values,
  manner: Manner,
  random: Random,
): unknown {
  const given = values.get(path);
  if (random() < (given === undefined ? 1 - manner.added : manner.left)) return undefined;
  switch (spec.kind) {
    case "dimension":
      return drawDimension(path, spec, values, manner, random);
    case "count":
      return drawCount(path, spec, values, manner, random);
    case "choice":
      return given?.kind === "choice" && random() >= manner.reworded
        ? given.value
        : pick(Object.keys(spec.options), random);
    case "table":
      return sizedTable(path, spec, values, manner);
    case "text":
      return given?.kind === "text" ? given.value : undefined;
  }
}
