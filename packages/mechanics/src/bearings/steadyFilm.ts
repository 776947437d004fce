import { notNegative, positive, requireAll, requireThat, share } from "../check/requireAll.ts";

/**
 * Least film thickness of a steadily loaded bearing, c (1 - eccentricity).
 * @param input.radialClearance half the diametral clearance [m], > 0
 * @param input.eccentricity offset of the journal over the radial clearance [-], 0 to 1
 * @returns thickness [m]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function steadyFilm(input: { radialClearance: number; eccentricity: number }): number {
  const { radialClearance, eccentricity } = input;
  requireAll(positive, { radialClearance });
  requireAll(share, { eccentricity });
  return radialClearance * (1 - eccentricity);
}

/**
 * Film thickness over the combined roughness of journal and shell; above 1 the peaks no longer touch.
 * @param input.filmThickness [m], >= 0
 * @param input.journalRoughness Rq of the journal [m], >= 0
 * @param input.shellRoughness Rq of the shell [m], >= 0
 * @returns ratio [-]
 * @throws RangeError when a value is out of range or both surfaces are perfectly smooth
 *
 * Source: Shigley's Mechanical Engineering Design.
 */
export function filmRatio(input: {
  filmThickness: number;
  journalRoughness: number;
  shellRoughness: number;
}): number {
  const { filmThickness, journalRoughness, shellRoughness } = input;
  requireAll(notNegative, { filmThickness, journalRoughness, shellRoughness });
  const combined = Math.hypot(journalRoughness, shellRoughness);
  requireThat(combined > 0, "journalRoughness and shellRoughness", combined, "at least one above 0");
  return filmThickness / combined;
}
