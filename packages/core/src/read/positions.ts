import { cellNumber } from "./cellNumber.ts";
import { type PositionKind, positionKinds } from "./FieldSpec.ts";
import type { DimensionValue, FieldValue } from "./FieldValue.ts";
import { fields } from "./fieldCatalog.ts";

type Values = ReadonlyMap<string, FieldValue>;

const wholeNumber = (values: Values, path: string): number | undefined => {
  const value = values.get(path);
  return value?.kind === "dimension" ? value.nominal : undefined;
};

/** Each cylinder's place along the crankshaft, counted from the first, where the build lists the throws. */
function orderAlong(values: Values): readonly number[] | undefined {
  const throws = values.get("crankshaft.throws");
  if (throws?.kind !== "table") return undefined;
  const places = throws.rows.map((row) => cellNumber(row, "position"));
  return places.map((place) => places.filter((other) => other < place).length);
}

/**
 * Number of the crankpin that a cylinder's rod runs on; both are counted from 1, crankpins along the crankshaft.
 * @returns undefined where the build does not tell: rods that share pins need the list of throws
 */
export function crankpinOf(cylinder: number, values: Values): number | undefined {
  const inline = values.get("block.layout");
  const rods =
    wholeNumber(values, "crankshaft.rodsPerPin") ??
    (inline?.kind === "choice" && inline.value === "inline" ? 1 : undefined);
  const place = orderAlong(values)?.[cylinder - 1] ?? (rods === 1 ? cylinder - 1 : undefined);
  return rods === undefined || place === undefined ? undefined : Math.floor(place / rods) + 1;
}

/** Fields that say how many cylinders, crankpins and main bearings there are, and which belongs to which. */
export const placingFields: readonly string[] = [
  "block.cylinders",
  "block.layout",
  "block.mainBearings",
  "crankshaft.rodsPerPin",
  "crankshaft.throws",
];

/** How many there are of a kind, or undefined where the build does not tell. */
export function countOf(kind: PositionKind, values: Values): number | undefined {
  const cylinders = wholeNumber(values, "block.cylinders");
  switch (kind) {
    case "cylinder":
      return cylinders;
    case "main":
      return wholeNumber(values, "block.mainBearings");
    case "crankpin": {
      const rods = wholeNumber(values, "crankshaft.rodsPerPin") ?? 1;
      return cylinders === undefined ? undefined : Math.ceil(cylinders / rods);
    }
  }
}

/** A dimension that was measured for each of several, and of what. */
export interface Positioned {
  readonly path: string;
  readonly per: PositionKind;
  readonly value: DimensionValue;
}

/** Every dimension of a build that has readings by position. */
export function positionedOf(values: Values): readonly Positioned[] {
  return [...values].flatMap(([path, value]) => {
    const spec = fields.get(path)?.spec;
    return value.kind === "dimension" &&
      value.positions !== undefined &&
      spec?.kind === "dimension" &&
      spec.per !== undefined
      ? [{ path, per: spec.per, value }]
      : [];
  });
}

/** Readings at positions that the engine does not have. */
export function positionsBeyond(values: Values) {
  return positionedOf(values).flatMap(({ path, per, value }) => {
    const count = countOf(per, values);
    return Object.keys(value.positions ?? {})
      .filter((at) => count !== undefined && Number(at) > count)
      .map((at) => ({
        path: [...path.split("."), "readings", at],
        found: `${positionKinds[per]} ${at}`,
        expected: `a number from 1 to ${count}: the build has no more`,
      }));
  });
}
