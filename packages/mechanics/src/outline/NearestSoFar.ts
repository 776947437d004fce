/** Where on the outline and in the turn the rod comes nearest. */
export interface Approach {
  /** index of the curve */
  readonly curve: number;
  /** crank angle [rad] */
  readonly angle: number;
  /** share of the curve [-] */
  readonly t: number;
  /** [m] */
  readonly clearance: number;
}

/** A cell that could hold no more than so much less than what was found is dropped [m]. */
export const RESOLUTION = 1e-10;
/** Of two places as near to less than this the one found first counts [m], so that rounding does not choose. */
const ALIKE = 1e-12;

/** The nearest approach of those that a search has met. */
export class NearestSoFar implements Approach {
  curve = 0;
  angle = 0;
  t = 0;
  clearance = Number.POSITIVE_INFINITY;

  /** Whether a bound leaves nothing to be found [m]. */
  isBeyond(bound: number): boolean {
    return bound >= this.clearance - RESOLUTION;
  }

  /** Takes an approach that is nearer. */
  meet(curve: number, angle: number, t: number, clearance: number): void {
    if (!(clearance < this.clearance - ALIKE)) return;
    this.curve = curve;
    this.angle = angle;
    this.t = t;
    this.clearance = clearance;
  }
}
