import type { RodToCylinder } from "@trialfit/mechanics";
import type { ListedGeometry } from "./rodGeometries.ts";
import { metalDistance, type Stretch, stretchesOf } from "./rodSampling.ts";

/** Distance of the extruded rod at one outline point, over slices from one side face to the other. */
function slicedDistance(geometry: RodToCylinder) {
  const distance = metalDistance(geometry);
  const { bigEndWidth, planeOffset } = geometry;
  const slice = (share: number) => planeOffset + (share - 0.5) * bigEndWidth;
  const faces = [slice(0), slice(1)];
  const all = [...faces, ...[0.02, 0.25, 0.5, 0.75, 0.98].map(slice)];
  const { throwRadius: r, rodLength: l, pinLineOffset: e } = geometry.crank;
  return (angle: number, slices: "faces" | "all") => {
    const tilt = Math.asin((r * Math.sin(angle) - e) / l);
    const [sin, cos] = [Math.sin(tilt), Math.cos(tilt)];
    const [x0, y0] = [r * Math.sin(angle), r * Math.cos(angle)];
    const levels = slices === "all" ? all : faces;
    return ([u, v]: readonly [number, number]) => {
      let least = Number.POSITIVE_INFINITY;
      for (const z of levels) {
        least = Math.min(least, distance(x0 - u * sin + v * cos, y0 + u * cos + v * sin, z));
      }
      return least;
    };
  };
}

const angles = 240;
const step = (2 * Math.PI) / angles;

/** Row and column of every sample of a grid, closed over the turn, that no neighbour is below. */
function lowPlaces(grid: readonly (readonly number[])[]): (readonly [i: number, j: number])[] {
  const lows: (readonly [number, number])[] = [];
  for (const [i, row] of grid.entries()) {
    const rows = [grid[(i + angles - 1) % angles]!, row, grid[(i + 1) % angles]!];
    for (const [j, value] of row.entries()) {
      const isBeaten = rows.some(
        (other) => other[j - 1]! < value || other[j]! < value || other[j + 1]! < value,
      );
      if (!isBeaten) lows.push([i, j]);
    }
  }
  return lows;
}

/** Least of a function near a place: nine samples, then nine between the neighbours of the best, and so on. */
function nineByNine(f: (at: number) => number, place: number, half: number, low: number, high: number) {
  let best = { at: place, value: f(place) };
  for (let size = half; size > half * 1e-7; ) {
    const middle = best.at;
    for (let i = -4; i <= 4; i++) {
      const at = Math.min(high, Math.max(low, middle + (i / 4) * size));
      const value = f(at);
      if (value < best.value) best = { at, value };
    }
    // A best at the rim of the window moves it along; the place must lie inside before it may shrink.
    if (Math.abs(best.at - middle) < 0.99 * size) size /= 4;
  }
  return best;
}

/**
 * Least distance near one sample. A window of 9 by 9 follows its best sample down to a sixteenth of the
 * grid; a narrow valley across the grid can hold such a window up, so the rest is done along the outline
 * first, for every crank angle looked at.
 */
function zoom(
  at: ReturnType<typeof slicedDistance>,
  stretch: Stretch,
  angle: number,
  s: number,
  sStep: number,
) {
  let best = { value: Number.POSITIVE_INFINITY, angle, s };
  for (let size = 1; size > 0.05; ) {
    const { value, angle: a0, s: s0 } = best;
    for (let i = -4; i <= 4; i++) {
      const a = a0 + (i / 4) * size * step;
      const slice = at(a, "faces");
      for (let j = -4; j <= 4; j++) {
        const t = Math.min(1, Math.max(0, s0 + (j / 4) * size * sStep));
        const here = slice(stretch.at(t));
        if (here < best.value) best = { value: here, angle: a, s: t };
      }
    }
    if (!(best.value < value - 1e-10)) size /= 2;
  }
  const along = (a: number) => {
    const slice = at(a, "faces");
    return nineByNine((t) => slice(stretch.at(t)), best.s, sStep, 0, 1);
  };
  const found = nineByNine((a) => along(a).value, best.angle, step / 2, -7, 7);
  return Math.min(found.value, at(found.at, "all")(stretch.at(along(found.at).at)));
}

/**
 * Least distance by plain sampling: 1.5 degrees by about 1.5 mm, then every low place of that grid is
 * looked at in a window that shrinks around its best sample to below a nanometre. A stretch of outline
 * ends at a corner, so windows are held inside it.
 */
export function leastBySampling(listed: ListedGeometry): number {
  const at = slicedDistance(listed.geometry);
  const slices = Array.from({ length: angles }, (_, i) => at(i * step, "faces"));
  const lows = stretchesOf(listed).flatMap((stretch) => {
    const count = Math.max(4, Math.ceil(stretch.length / 1.5e-3));
    const places = Array.from({ length: count + 1 }, (_, j) => stretch.at(j / count));
    const grid = slices.map((slice) => places.map(slice));
    return lowPlaces(grid).map(([i, j]) => ({
      value: grid[i]![j]!,
      run: () => zoom(at, stretch, i * step, j / count, 1 / count),
    }));
  });
  // A grid sample is off its valley by at most half a step either way, under 2 mm of motion in all.
  const lowest = Math.min(...lows.map(({ value }) => value));
  return Math.min(...lows.filter(({ value }) => value < lowest + 2e-3).map(({ run }) => run()));
}

/** A broken method for comparison: listed points only, as if an outline touched nothing between them. */
export function leastOfListedPoints({ geometry, near, far }: ListedGeometry): number {
  const at = slicedDistance(geometry);
  const points = [...near.map(({ u, v }) => [u, v] as const), ...far.map(({ u, v }) => [u, -v] as const)];
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 7200; i++) {
    least = Math.min(least, ...points.map(at((i * Math.PI) / 3600, "faces")));
  }
  return least;
}
