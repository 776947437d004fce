import { limitedSlope } from "../valves/liftKnots.ts";

/** Slope at an end from the two chords there: that of the parabola through three points, kept monotone. */
function endSlope(width: number, chord: number, nextWidth: number, nextChord: number): number {
  const parabola = ((2 * width + nextWidth) * chord - width * nextChord) / (width + nextWidth);
  if (parabola * chord <= 0) return 0;
  return Math.sign(chord) * Math.min(Math.abs(parabola), 3 * Math.abs(chord));
}

/**
 * A monotone cubic through the points of a table, as a function of the place; beyond its ends the end value is kept.
 * @param places ascending, at least 3
 * @param values at the places
 * @returns place → value
 *
 * Source: monotone piecewise cubic interpolation, numerical practice (common practice).
 */
export function tableCurveThrough(
  places: readonly number[],
  values: ArrayLike<number>,
): (at: number) => number {
  const last = places.length - 1;
  const knot = (i: number) => ({ angle: places[i]!, lift: values[i]! });
  const gap = (i: number) => places[i + 1]! - places[i]!;
  const chord = (i: number) => (values[i + 1]! - values[i]!) / gap(i);
  const slopes = Float64Array.from(places, (_, i) => {
    if (i === 0) return endSlope(gap(0), chord(0), gap(1), chord(1));
    if (i === last) return endSlope(gap(i - 1), chord(i - 1), gap(i - 2), chord(i - 2));
    return limitedSlope(knot(i - 1), knot(i), knot(i + 1));
  });
  return (at) => {
    if (at <= places[0]!) return values[0]!;
    if (at >= places[last]!) return values[last]!;
    let cell = 0;
    while (places[cell + 1]! < at) cell++;
    const width = places[cell + 1]! - places[cell]!;
    const t = (at - places[cell]!) / width;
    const [low, high] = [values[cell]!, values[cell + 1]!];
    const [slopeLow, slopeHigh] = [width * slopes[cell]!, width * slopes[cell + 1]!];
    const rise = high - low;
    return (
      low + t * (slopeLow + t * (3 * rise - 2 * slopeLow - slopeHigh + t * (slopeLow + slopeHigh - 2 * rise)))
    );
  };
}

/**
 * Value of {@link tableCurveThrough} at one place.
 * @param places ascending, at least 3
 * @param values at the places
 * @param at where
 *
 * Source: monotone piecewise cubic interpolation, numerical practice (common practice).
 */
export function tableCurve(places: readonly number[], values: ArrayLike<number>, at: number): number {
  return tableCurveThrough(places, values)(at);
}
