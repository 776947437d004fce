import { cycleValue, type LoadCycle, leastFilmOverCycle } from "@trialfit/mechanics";

interface FilmBearing {
  readonly viscosity: number;
  readonly angularSpeed: number;
  readonly journalDiameter: number;
  readonly length: number;
  /** diametral, hot */
  readonly clearance: number;
}

/** Least film of one bearing over the cycle, under the samples of its load. */
export function leastFilm(
  { clearance, ...bearing }: FilmBearing,
  load: LoadCycle,
  meanTurning: (angle: number) => number,
): number {
  return leastFilmOverCycle({
    ...bearing,
    radialClearance: clearance / 2,
    load: (angle) => ({ x: cycleValue(load.x, angle), y: cycleValue(load.y, angle) }),
    meanTurning,
  }).film;
}
