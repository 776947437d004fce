/**
 * Writes the invented parts lists of the demo build Larkspur Hill into demo/parts. Seeded: it writes the same lists
 * again and again. `node packages/core/scripts/writePartsLists.ts`
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseSource } from "../src/read/parseSource.ts";
import { designedLists } from "./partsLists/designs.ts";
import { listText } from "./partsLists/listText.ts";

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const demo = "../demo/larkspur-hill.yaml";
const build = parseSource(readFileSync(at(demo), "utf8"), demo).data as Record<
  string,
  Record<string, unknown>
>;

mkdirSync(at("../demo/parts"), { recursive: true });
for (const list of designedLists)
  writeFileSync(at(`../demo/parts/${list.part}.csv`), listText(list, build[list.part]!));
