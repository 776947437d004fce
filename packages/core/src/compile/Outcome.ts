/**
 * What a condition comes to, as bits: whether it surely holds, whether it may hold, and, where these differ, whether
 * something that is missing could settle it.
 */
export const Outcome = {
  /** Surely does not hold. */
  no: 0,
  /** Depends on where in the bands the values lie. */
  open: 2,
  /** Surely holds. */
  yes: 3,
  /** Depends on something that is missing. */
  lacking: 6,
} as const;

export const SURELY = 1;
export const POSSIBLY = 2;
export const LACKING = 4;
