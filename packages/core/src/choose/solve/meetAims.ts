import { easeAims } from "./easeAims.ts";
import { type Fit, fitAims, MET } from "./fitAims.ts";
import { type Trial, worstMiss } from "./Trial.ts";

/** Share of its allowance that an aim may take up where it cannot be met to the value. */
const INSIDE = 1 - 1e-6;

/**
 * Sizes at which every aim is met: exactly where that can be, otherwise within the allowances. What comes nearest to
 * all values may lie outside one allowance although other sizes keep to all of them.
 */
export function meetAims(trial: Trial, near?: readonly number[]): Fit {
  const exact = fitAims(trial, near);
  if (exact.off <= MET) return exact;
  const eased = easeAims(
    trial,
    trial.aims.map(() => INSIDE),
  );
  const { sizes } = fitAims(eased, exact.sizes);
  const off = worstMiss(trial.misses(sizes));
  return off < exact.off ? { sizes, off } : exact;
}
