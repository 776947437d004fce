/** A linear scale of a picture: SI value → place along the picture. */
export interface BandScale {
  readonly at: (value: number) => number;
  readonly from: number;
  readonly to: number;
}

/** A scale that shows all the values with room at both ends; what is unbounded ends at the edge. */
export function bandScale(values: readonly number[], left: number, right: number): BandScale {
  const finite = values.filter(Number.isFinite);
  const least = Math.min(...finite);
  const most = Math.max(...finite);
  const room = (most - least || Math.abs(most) || 1) * 0.22;
  const from = least - room;
  const to = most + room;
  const at = (value: number) =>
    left + ((Math.min(Math.max(value, from), to) - from) / (to - from)) * (right - left);
  return { at, from, to };
}
