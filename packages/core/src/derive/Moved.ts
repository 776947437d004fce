/** Fields moved off their nominal values, and what was worked out for them. */
export interface Moved {
  readonly fields: ReadonlyMap<string, number>;
  readonly known: Map<string, number>;
  /** True where these values will hardly be asked for again, so that nothing of them is kept. */
  readonly once: boolean;
  /** Whether a quantity rests on any of the fields; points at which the same fields are moved can share it. */
  readonly touches: Map<string, boolean>;
}

/** Nothing moved. */
export const unmoved: Moved = { fields: new Map(), known: new Map(), once: false, touches: new Map() };

/** Fields to compute with in place of their nominal values [SI]; they will hardly be asked for again. */
export const movedOnce = (fields: ReadonlyMap<string, number>): Moved => ({
  fields,
  known: new Map(),
  once: true,
  touches: new Map(),
});

/**
 * Points at which always the same fields are moved, each given as one number for each field in order [SI]. What it
 * gives serves until the next point: a search asks for thousands.
 */
export function movedAlong(paths: readonly string[]): (point: readonly number[]) => Moved {
  const fields = new Map<string, number>();
  const moved: Moved = { fields, known: new Map(), once: false, touches: new Map() };
  return (point) => {
    for (let index = 0; index < paths.length; index += 1) fields.set(paths[index]!, point[index]!);
    moved.known.clear();
    return moved;
  };
}
