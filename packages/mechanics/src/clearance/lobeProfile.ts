import { pointToSegment } from "../outline/pointToSegment.ts";

/** Half a degree of camshaft: the chords of a lobe of 30 mm then lie within 0.3 um of its curve. */
export const lobeSamples = 720;
const turnOfChord = (2 * Math.PI) / lobeSamples;

/** The outside of a camshaft's lobes where a rod passes them, fixed to the camshaft. */
export interface LobeProfile {
  /** distance of the outside from the camshaft axis [m] at evenly spaced angles of the camshaft from 0 */
  readonly radii: readonly number[];
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly greatest: number;
}

/**
 * Profile from its radii.
 * @param radii outside of the lobes [m], > 0, at evenly spaced angles of the camshaft from 0
 *
 * Source: definition.
 */
export function lobeProfile(radii: readonly number[]): LobeProfile {
  const step = (2 * Math.PI) / radii.length;
  return {
    radii,
    x: radii.map((radius, i) => radius * Math.cos(i * step)),
    y: radii.map((radius, i) => radius * Math.sin(i * step)),
    greatest: Math.max(...radii),
  };
}

/**
 * How far the profile reaches out towards an angle of the camshaft [m].
 * @param radii at evenly spaced angles from 0
 * @param place the angle, in steps between them
 */
export function radiusTowards(radii: readonly number[], place: number): number {
  const first = Math.floor(place);
  const at = ((first % lobeSamples) + lobeSamples) % lobeSamples;
  const share = place - first;
  return radii[at]! * (1 - share) + radii[(at + 1) % lobeSamples]! * share;
}

/** Distance of a point from a chord of the profile. */
function chordDistance({ x, y }: LobeProfile, from: number, px: number, py: number): number {
  const i = ((from % lobeSamples) + lobeSamples) % lobeSamples;
  const j = i + 1 === lobeSamples ? 0 : i + 1;
  return pointToSegment(px, py, x[i]!, y[i]!, x[j]!, y[j]!);
}

/**
 * Signed distance of a point from a profile, given in polar form about the camshaft axis. A chord that stands
 * round by an angle is at least r times its sine away, so only those near the foot are looked at. Where the
 * distance is surely more than a limit, a number above the limit and not above the distance stands for it.
 * @param profile outside of the lobes
 * @param r of the point from the axis [m], >= 0
 * @param camAngle of the point, fixed to the camshaft [rad]
 * @param limit distance beyond which the true one is of no interest [m]
 * @returns distance [m], - inside
 *
 * Source: plane geometry.
 */
export function lobeDistance(profile: LobeProfile, r: number, camAngle: number, limit: number): number {
  if (r - profile.greatest > limit) return r - profile.greatest;
  const place = (camAngle / (2 * Math.PI)) * lobeSamples;
  const first = Math.floor(place);
  const radius = radiusTowards(profile.radii, place);
  const gap = Math.abs(r - radius);
  const px = r * Math.cos(camAngle);
  const py = r * Math.sin(camAngle);
  let least = gap;
  // Outwards from the foot, until no chord so far round can be nearer than what is found.
  for (let k = 0; k <= lobeSamples / 2; k++) {
    const round = Math.min(Math.max(0, k - 1) * turnOfChord, Math.PI / 2);
    if (r * Math.sin(round) > least) break;
    const [ahead, behind] = [first + k, first - k];
    least = Math.min(least, chordDistance(profile, ahead, px, py), chordDistance(profile, behind, px, py));
  }
  return r < radius ? -least : least;
}
