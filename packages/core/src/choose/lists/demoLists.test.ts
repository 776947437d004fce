import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { designedLists } from "../../../scripts/partsLists/designs.ts";
import { listText } from "../../../scripts/partsLists/listText.ts";
import { parseSource } from "../../read/parseSource.ts";
import { readPartsListText } from "./readPartsListText.ts";

const demo = new URL("../../../demo/", import.meta.url);
const textOf = (name: string) => readFileSync(new URL(name, demo), "utf8");
const build = parseSource(textOf("larkspur-hill.yaml"), "larkspur-hill.yaml").data as Record<
  string,
  Record<string, unknown>
>;

describe("the invented parts lists", () => {
  it("hold at least 2,000 parts of ten kinds, each with price, lead time, stock and mass", () => {
    const lists = readdirSync(new URL("parts", demo)).map((file) =>
      readPartsListText(textOf(`parts/${file}`), file),
    );
    const parts = lists.flatMap((list) => list.parts);
    expect(new Set(lists.map(({ part }) => part.key)).size).toBe(10);
    expect(parts.length).toBeGreaterThanOrEqual(2_000);
    for (const list of lists) expect(list.about).toMatch(/^Invented/);
    for (const part of parts)
      for (const known of [part.price, part.leadTime, part.stock, part.totalMass])
        expect(known).toBeDefined();
    expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
  });

  it("are what their script writes", () => {
    expect(designedLists).toHaveLength(10);
    for (const list of designedLists)
      expect(textOf(`parts/${list.part}.csv`) === listText(list, build[list.part]!), list.part).toBe(true);
  });
});
