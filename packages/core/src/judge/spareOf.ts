import type { Leaf } from "./CompiledRule.ts";
import type { BandFact } from "./Fact.ts";

/** What a comparison of numbers has to spare over the whole band [SI]; negative where it does not surely hold. */
export function spareOf({ operator }: Leaf, left: BandFact, right: BandFact): number {
  return operator.startsWith("greater") ? left.low - right.high : right.low - left.high;
}
