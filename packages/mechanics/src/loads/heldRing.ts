import { finite, positive, requireAll } from "../check/requireAll.ts";

/** How the pin or journal presses on its half of the ring: alike everywhere, or falling off with the cosine. */
export type RingPressure = "even" | "cosine";

/** A ring pulled by a round pin on one half and held by the rod on the other. */
export interface HeldRing {
  /** pull on the whole ring [N], > 0 */
  readonly force: number;
  /** radius of the middle of the ring's section [m], > 0 */
  readonly radius: number;
  readonly pressure: RingPressure;
  /** from the middle of the loaded half to where the ring runs into stiff metal [rad], pi/2 to pi */
  readonly heldAngle: number;
}

/** What one section of the ring carries. */
export interface SectionLoad {
  /** along the ring [N], + tension */
  readonly tension: number;
  /** [N m], + when it straightens the ring */
  readonly moment: number;
}

/** Tension that the pull of 1 N itself adds at an angle of the loaded half; half of the resultant across, per newton. */
const pulls = {
  even: { at: (angle: number) => (1 - Math.cos(angle)) / 2, across: 1 / 2, sum: (Math.PI / 2 - 1) / 2 },
  cosine: {
    at: (angle: number) => (angle * Math.sin(angle)) / Math.PI,
    across: 1 / Math.PI,
    sum: 1 / Math.PI,
  },
} as const;
/** Integral of the same times the cosine over the loaded half. */
const moments = { even: (1 - Math.PI / 4) / 2, cosine: 1 / 8 } as const;

/**
 * Tension and moment round a ring that is pulled by the pin within it: the loaded half and the parts beyond it are
 * an arch of one section whose two ends, at the held angle, neither turn nor move sideways. Two unknowns at the
 * middle of the loaded half follow from that (Castigliano, bending alone, thin ring). At pi the ring is whole and
 * hangs on one point.
 * @param ring load and shape
 * @returns what a section carries, by its angle from the middle of the loaded half [rad], 0 to the held angle
 * @throws RangeError when a value is out of range
 *
 * Source: Timoshenko, Strength of Materials (rings and arches, from memory). Held at 130 degrees it gives 0.400 F and
 * 0.025 F times the span at the middle under a cosine; Kolchin & Demidov have 0.4 and 0.023 (from memory).
 */
export function heldRing({ force, radius, pressure, heldAngle }: HeldRing): (angle: number) => SectionLoad {
  requireAll(positive, { force, radius });
  requireAll({ atLeast: Math.PI / 2, atMost: Math.PI }, { heldAngle });
  const { at, across, sum: loadedSum } = pulls[pressure];
  const sine = Math.sin(heldAngle);
  const squares = heldAngle / 2 + Math.sin(2 * heldAngle) / 4;
  const sum = loadedSum - across * (sine - 1) - Math.cos(heldAngle) / 2;
  const weighted = moments[pressure] - across * (squares - Math.PI / 4) + (sine ** 2 - 1) / 4;
  // No turn: the moments sum to 0; no way sideways: so do they times the cosine.
  const middle = ((sum * sine) / heldAngle - weighted) / (squares - sine ** 2 / heldAngle);
  const shift = -(middle * sine + sum) / heldAngle;
  return (angle) => {
    requireAll(finite, { angle });
    requireAll({ atLeast: 0, atMost: heldAngle * (1 + 1e-12) }, { angle });
    const tension =
      angle <= Math.PI / 2
        ? middle * Math.cos(angle) + at(angle)
        : (middle - across) * Math.cos(angle) + Math.sin(angle) / 2;
    return { tension: force * tension, moment: force * radius * (shift + tension) };
  };
}
