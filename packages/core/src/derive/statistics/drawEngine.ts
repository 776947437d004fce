import type { DimensionValue, FieldValue } from "../../read/FieldValue.ts";
import type { Place } from "../places.ts";
import { seeded } from "../seeded.ts";
import { drawValue } from "./drawValue.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** A dimension that can vary. */
export interface Varying {
  readonly path: string;
  /** Whose dimension it is: what has the same name is the same piece of metal, and gets the same number. */
  readonly name: string;
  readonly value: DimensionValue;
}

/** Number under which a dimension was measured, where it was measured for each of several. */
function measuredAt(whole: FieldValue | undefined, value: DimensionValue): string | undefined {
  if (whole?.kind !== "dimension") return undefined;
  return Object.entries(whole.positions ?? {}).find(([, at]) => at === value)?.[0];
}

/**
 * The dimensions of an engine, or of one of its cylinders, crankpins or main bearings, that can vary.
 * @param values what the build gives, defaults filled in
 * @param place the place; for the engine as a whole only its values, those that the build gives unless given
 */
export function varyingOf(
  values: Values,
  place: Pick<Place, "values"> & Partial<Place> = { values },
): readonly Varying[] {
  return [...place.values].flatMap(([path, value]): Varying[] => {
    if (value.kind !== "dimension" || value.low === value.high) return [];
    const whole = values.get(path);
    const number = measuredAt(whole, value);
    // One that was not measured at this place is a piece of its own too.
    const own = number ?? (whole === value ? undefined : place.label);
    return [{ path, name: own === undefined ? path : `${path} ${own}`, value }];
  });
}

/**
 * One engine drawn within the tolerances: path → value [SI]. The same seed and number give the same engine, whatever
 * the order of the dimensions and whichever of them are asked for; a dimension that is added leaves the others as
 * they were.
 * @param seed whole number from 0 to 2³² − 1
 * @param number which of the engines, from 0
 */
export function drawEngine(
  varying: readonly Varying[],
  seed: number,
  number: number,
): ReadonlyMap<string, number> {
  return new Map(
    varying.map(({ path, name, value }) => [path, drawValue(value, seeded(seed, name, number))]),
  );
}
