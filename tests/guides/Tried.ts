import type { FencedBlock } from "../../site/src/data/fencedBlocks.ts";

/** A block of a page, how it was tried, and what is wrong with it. */
export interface Tried {
  readonly block: FencedBlock;
  readonly how: string;
  readonly problems: readonly string[];
  /** For an output: what the page should show. */
  readonly due?: string;
}
