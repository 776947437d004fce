import { type LoadCycle, leastFilmOverSamples } from "@trialfit/mechanics";

interface FilmBearing {
  readonly viscosity: number;
  readonly angularSpeed: number;
  readonly journalDiameter: number;
  readonly length: number;
  /** diametral, hot */
  readonly clearance: number;
}

/** Least film of one bearing over the cycle, under the samples of its load and, where it changes, of its turning. */
export function leastFilm(
  { clearance, ...bearing }: FilmBearing,
  load: LoadCycle,
  meanTurning: Float64Array | number,
): number {
  return leastFilmOverSamples({ ...bearing, radialClearance: clearance / 2, load, meanTurning }).film;
}
