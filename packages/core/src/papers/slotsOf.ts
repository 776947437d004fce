import type { DimensionSpec, PositionKind } from "../read/FieldSpec.ts";
import { positionKinds } from "../read/FieldSpec.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import { fields } from "../read/fieldCatalog.ts";
import { countOf } from "../read/positions.ts";

/** One place where one reading is taken. */
export interface Slot {
  readonly path: string;
  /** Number of the cylinder, crankpin or main bearing; absent where the engine has the dimension once. */
  readonly position?: string;
  readonly height?: string;
  readonly direction?: string;
}

/** Where the form of a dimension is found: at which heights, in which directions. */
const places: Readonly<
  Record<PositionKind, { readonly heights: readonly string[]; readonly directions: readonly string[] }>
> = {
  cylinder: { heights: ["top", "middle", "bottom"], directions: ["along", "across"] },
  crankpin: { heights: ["front", "rear"], directions: ["in line with throw", "square to throw"] },
  main: { heights: ["front", "rear"], directions: ["upright", "level"] },
};

function slotsAt(path: string, spec: DimensionSpec, position: string): readonly Slot[] {
  const { form, per } = spec;
  if (form === undefined || per === undefined) return [{ path, position }];
  const { heights, directions } = places[per];
  const levels = form.taper === undefined ? ["middle"] : heights;
  const ways = form.outOfRound === undefined ? [undefined] : directions;
  return levels.flatMap((height) =>
    ways.map((direction) => ({ path, position, height, ...(direction === undefined ? {} : { direction }) })),
  );
}

/**
 * Every reading that a dimension asks for in this engine: one for each cylinder, crankpin or main bearing, at each
 * height and in each direction where its form matters.
 * @returns none where the build does not tell how many positions there are, or the path is no dimension
 */
export function slotsOf(path: string, values: ReadonlyMap<string, FieldValue>): readonly Slot[] {
  const spec = fields.get(path)?.spec;
  if (spec?.kind !== "dimension") return [];
  if (spec.per === undefined) return [{ path }];
  const count = countOf(spec.per, values) ?? 0;
  return Array.from({ length: count }, (_, index) => slotsAt(path, spec, String(index + 1))).flat();
}

/** The place of a slot in words: `cylinder 3, top, across`; empty for the whole engine. */
export function placeOf({ path, position, height, direction }: Slot): string {
  const spec = fields.get(path)?.spec;
  const per = spec?.kind === "dimension" && spec.per !== undefined ? positionKinds[spec.per] : "";
  const words = [position === undefined ? undefined : `${per} ${position}`, height, direction];
  return words.filter((word) => word !== undefined).join(", ");
}
