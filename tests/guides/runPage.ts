import { type FencedBlock, fencedBlocks } from "../../site/src/data/fencedBlocks.ts";
import { PageReader } from "./PageReader.ts";
import type { Tried } from "./Tried.ts";

/** Tries every block of a page: first its files, since a page may show a command before the file, then the rest in order. */
export async function runPage(page: string): Promise<readonly Tried[]> {
  const reader = new PageReader();
  const blocks = fencedBlocks(page);
  const isFile = ({ language }: FencedBlock) => language === "yaml" || language === "csv";
  try {
    const tried: Tried[] = [];
    for (const block of [...blocks.filter(isFile), ...blocks.filter((one) => !isFile(one))])
      tried.push(await reader.try(block));
    return tried.sort((a, b) => a.block.from - b.block.from);
  } finally {
    reader.close();
  }
}
