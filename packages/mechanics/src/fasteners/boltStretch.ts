import { notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";

/** A length of bolt of one cross-section. */
export interface BoltSegment {
  /** [m], > 0; count half a diameter of the engaged thread as well */
  readonly length: number;
  /** [m2], > 0; stress area in the thread */
  readonly area: number;
  /** [Pa], > 0 */
  readonly elasticModulus: number;
}

/**
 * Elastic compliance of a bolt, the sum of l / (E A) of its segments.
 * @param segments shank, waist and thread in any order, at least one
 * @returns compliance [m/N]
 * @throws RangeError when there is no segment or a value is not above zero
 *
 * Source: VDI 2230-1.
 */
export function boltCompliance(segments: readonly BoltSegment[]): number {
  requireThat(segments.length > 0, "segments", segments.length, "at least one segment");
  return segments.reduce((sum, { length, area, elasticModulus }) => {
    requireAll(positive, { length, area, elasticModulus });
    return sum + length / (elasticModulus * area);
  }, 0);
}

/**
 * Elastic stretch of a bolt under its preload.
 * @param input.preload [N], >= 0
 * @param input.segments the bolt's segments
 * @returns stretch [m]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function boltStretch(input: { preload: number; segments: readonly BoltSegment[] }): number {
  requireAll(notNegative, { preload: input.preload });
  return input.preload * boltCompliance(input.segments);
}

/**
 * Preload that a measured stretch gives; the inverse of {@link boltStretch}. It needs no friction, so it is the
 * surest way where both ends of a bolt can be reached.
 * @param input.stretch [m], >= 0
 * @param input.segments the bolt's segments
 * @returns preload [N]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function preloadFromStretch(input: { stretch: number; segments: readonly BoltSegment[] }): number {
  requireAll(notNegative, { stretch: input.stretch });
  return input.stretch / boltCompliance(input.segments);
}
