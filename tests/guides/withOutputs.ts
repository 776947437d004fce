import type { Tried } from "./Tried.ts";

/** The page with every output that it shows as it is printed now. */
export function withOutputs(page: string, tried: readonly Tried[]): string {
  return tried.reduceRight(
    (text, { block, due }) =>
      due === undefined ? text : text.slice(0, block.from) + due + text.slice(block.to),
    page,
  );
}
