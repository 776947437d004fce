import { type FencedBlock, fencedBlocks } from "./fencedBlocks.ts";

/**
 * The text of the first block of a page that is like this, for another page that shows the same: the tests try it
 * where it stands.
 * @throws Error when the page no longer has such a block.
 */
export function shownBlock(page: string, like: (block: FencedBlock) => boolean): string {
  const found = fencedBlocks(page).find(like);
  if (found === undefined) throw new Error("a page no longer has the block that another one shows");
  return found.text.trimEnd();
}
