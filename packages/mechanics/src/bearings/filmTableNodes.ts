import { reynoldsFilm } from "./reynoldsFilm.ts";
import { shortBearingSommerfeld } from "./shortBearing.ts";

/** Length over diameter of the table's blocks. */
export const tableLengthRatios = [0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.75, 1, 1.25, 1.5, 2] as const;

/** Eccentricities of a block's rows, closer where the film is thin. */
export const tableEccentricities = [
  0.01, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.85, 0.9, 0.93, 0.95, 0.965, 0.975, 0.983, 0.99,
] as const;

/** One row: load over that of the short bearing, attitude [rad], flow, share of side flow, P over greatest pressure. */
export type FilmRow = readonly [
  loadShare: number,
  attitude: number,
  flow: number,
  sideFlowShare: number,
  pressureRatio: number,
];

const DIGITS = 6;

/**
 * Solves Reynolds' equation for one row of the table.
 * @param lengthRatio length over diameter [-]
 * @param eccentricity [-]
 */
export function filmRow(lengthRatio: number, eccentricity: number): FilmRow {
  const film = reynoldsFilm({ lengthRatio, eccentricity });
  const loadShare = shortBearingSommerfeld({ lengthRatio, eccentricity }) / film.sommerfeld;
  const rounded = (value: number) => Number(value.toPrecision(DIGITS));
  return [
    rounded(loadShare),
    rounded(film.attitude),
    rounded(film.flow),
    rounded(film.sideFlowShare),
    rounded(film.pressureRatio),
  ];
}
